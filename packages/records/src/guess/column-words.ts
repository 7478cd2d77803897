import type { Axis, Placement, Quantity, Side } from '../quantities.ts';

/*
 * Words that stand above columns, in small letters without accents, in some languages of the clinics that may export one:
 * English, German, Spanish, French, Italian, Portuguese, Dutch, the Nordic ones. Common practice, no source.
 */

/** Words between commas, which may hold blanks. */
function list(words: string): readonly string[] {
  return words.split(/,\s*/);
}

export const TIME_WORDS: readonly string[] =
  list(`time, times, timestamp, zeit, zeitstempel, uhrzeit, tiempo, temps, tempo, tijd, tid, aika, czas, elapsed,
  clock, hora, heure, seconds, secs, millis, micros, epoch, datetime, date time, sekunden, duree`);

export const SAMPLE_WORDS: readonly string[] =
  list(`sample, samples, index, idx, frame, frames, counter, packet, probe, messpunkt, nummer, muestra, echantillon,
  campione, amostra, seq, sequence, lfd, row, item, zaehler, zahler, bild`);

export const QUANTITY_WORDS: Readonly<Record<Quantity, readonly string[]>> = {
  force:
    list(`force, forces, kraft, fuerza, forza, forca, kracht, voima, sila, load, loadcell, last, fz, grf, vgrf, pull,
  push, zug, druck, tension, weight, gewicht, peso, poids, charge, carga`),
  'heel-height':
    list(`heel, height, heelheight, ferse, fersenhohe, fersenhoehe, hohe, hoehe, hub, talon, hauteur, tallone,
  altezza, altura, hiel, hielhoogte, hoogte, displacement, weg, position, verschiebung, string, hojd, hoyde,
  elevation, lift, calcanhar`),
  acceleration:
    list(`acc, accel, acceleration, accelerometer, beschleunigung, beschl, aceleracion, aceleracao, accelerazione,
  versnelling, acceleratie, akseleration`),
  'angular-velocity':
    list(`gyro, gyr, gyroscope, gyroskop, angular velocity, angvel, drehrate, winkelgeschwindigkeit, velocidad
  angular, vitesse angulaire, velocita angolare, giroscopio, giro, omega, rotation rate, rot, turn rate,
  hoeksnelheid`),
  torque: list(`torque, moment, drehmoment, par, coppia, couple, momento, koppel, torsion`),
  angle: list(
    `angle, winkel, gelenkwinkel, angulo, angolo, hoek, vinkel, pitch, roll, yaw, tilt, inclination, neigung`,
  ),
  // a count by hand comes from this software alone: it is never guessed
  tap: [],
};

export const SIDE_WORDS: Readonly<Record<Side, readonly string[]>> = {
  left: list(`left, l, lt, lft, li, lks, links, linke, linker, linkes, izq, izquierda, izquierdo, gauche, g, sinistra,
  sinistro, sx, esquerda, esquerdo, esq, vanster, venstre`),
  right:
    list(`right, r, rt, rgt, re, rts, rechts, rechte, rechter, rechtes, der, dcha, derecha, derecho, droite, droit, d,
  destra, destro, dx, direita, direito, dir, hoger, hoyre, hojre`),
};

export const PLACEMENT_WORDS: Readonly<Record<Placement, readonly string[]>> = {
  foot: list(`foot, fuss, pie, pied, piede, voet, instep, rist, dorsum, shoe, schuh, pe, fot`),
  heel: ['heel', 'ferse', 'talon', 'tallone', 'hiel', 'calcanhar'],
  trunk: list(`trunk, sacrum, pelvis, becken, lumbar, lowerback, lower back, waist, hip, rumpf, tronco, tronc, bassin,
  sternum, rucken, kreuzbein`),
  platform: list(
    `plate, platform, forceplate, platte, kraftmessplatte, plataforma, plateforme, pedana, plaat, grf, vgrf, fz`,
  ),
  hand: [],
};

export const IDENTITY_WORDS: readonly string[] =
  list(`id, subject, subj, person, participant, patient, patientid, proband, probandin, vp, sujeto, paciente, sujet,
  code, pid, soggetto, paziente, teilnehmer, name`);

/** Words for what is recorded beside and is not used here. */
export const OTHER_WORDS: readonly string[] =
  list(`temp, temperature, temperatur, temperatura, mag, magn, magnetometer, battery, batt, akku, emg, status, flag,
  flags, trigger, sync, quat, quaternion, event, marker, comment, kommentar, note, pressure, humidity, rssi,
  error, checksum, voltage, spannung, heart, hr, velocity, speed, geschwindigkeit, fx, fy, mx, my, mz, cop,
  copx, copy, heartrate`);

/** Words that say nothing about what was measured. */
export const GENERIC_WORDS: readonly string[] =
  list(`channel, chan, ch, kanal, canal, data, daten, value, wert, valor, valeur, column, col, spalte, sensor,
  signal, raw, analog, ai, adc, input, var, field, unnamed, measurement, messwert, reading, serie, series, y,
  x, ch`);

interface ShortName {
  readonly quantity: Quantity;
  readonly axis: Axis;
}

/** Names of two letters or so; the axis is in them. */
export const AXIS_WORDS: Readonly<Record<string, ShortName | undefined>> = Object.fromEntries<ShortName>(
  (['x', 'y', 'z'] as const).flatMap((axis): [string, ShortName][] => [
    [`a${axis}`, { quantity: 'acceleration', axis }],
    [`acc${axis}`, { quantity: 'acceleration', axis }],
    [`accel${axis}`, { quantity: 'acceleration', axis }],
    [`g${axis}`, { quantity: 'angular-velocity', axis }],
    [`w${axis}`, { quantity: 'angular-velocity', axis }],
    [`gyr${axis}`, { quantity: 'angular-velocity', axis }],
    [`gyro${axis}`, { quantity: 'angular-velocity', axis }],
    [`omega${axis}`, { quantity: 'angular-velocity', axis }],
  ]),
);
