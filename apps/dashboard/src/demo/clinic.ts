import type { Person } from '@surae/casebook';
import type { VisitBook } from '../journey/visit-book.ts';

/** Invented people of an invented clinic; any likeness is chance. */
const people: readonly Omit<Person, 'id'>[] = [
  { name: 'Ines Okafor-Lind', bodyMassKg: 61.5, heelLeverM: 0.172, sex: 'women', birthYear: 1988, demo: true },
  { name: 'Tomasz Brelo', bodyMassKg: 84, heelLeverM: 0.196, sex: 'men', birthYear: 1975, demo: true },
  { name: 'Mirela Haddad', bodyMassKg: 70.2, heelLeverM: 0.181, sex: 'women', birthYear: 1999, demo: true },
  { name: 'Jonne Vatanen-Ruiz', bodyMassKg: null, heelLeverM: null, demo: true },
];

/** How many people may be added with twelve weeks behind them. */
export const coursePeople = 8;

/** Whether somebody is of the demo clinic as it begins. */
export function isOfBeginning({ demo, name }: Pick<Person, 'demo' | 'name'>): boolean {
  return demo && people.some((one) => one.name === name);
}

/** Writes the demo clinic into an empty book; does nothing when there are people in it. */
export async function fillDemoClinic(book: VisitBook): Promise<void> {
  if ((await book.people()).length > 0) return;
  for (const person of people) await book.addPerson(person);
}
