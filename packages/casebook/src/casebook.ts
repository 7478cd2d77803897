import type { StoredDocument } from '@surae/storage';
import { acceptedVisit } from './accepted-set.ts';
import { laidOver } from './amendments.ts';
import { withAround } from './around-visit.ts';
import { type Certificate, certificatesOf } from './calibrations.ts';
import { type DescriptionEntry, descriptionEntries } from './description-entries.ts';
import { type Entry, entryOf } from './entry.ts';
import type { AuditEntry, ReliabilitySet } from './kinds/clinic-kinds.ts';
import { kindOf } from './kinds/kinds.ts';
import type { KneeToWall } from './kinds/knee-to-wall.ts';
import type {
  DoneItem,
  Episode,
  MorningCheck,
  OnFeet,
  PersonNote,
  PlanItem,
  QuestionnaireTotal,
  Run,
  RunsWhole,
  Target,
  VerdictByHand,
} from './kinds/person-kinds.ts';
import { amendmentRules, type BodyProblemCode, readBodies } from './kinds/read-body.ts';
import { type OwnErrorsEntry, ownErrorsOf } from './own-errors.ts';
import { type OwnRulesEntry, ownRulesOf } from './own-rules.ts';
import { type Person, personOf } from './person.ts';
import { type AmendedField, amended, amendedAsOf, amendedFields, amendmentOf } from './person-amendment.ts';
import { type Recount, recountsIn } from './recounts.ts';
import { type TakenRecording, takenRecordings } from './taken-recordings.ts';
import type { Visit } from './visit.ts';
import { foldVisit } from './visit-events.ts';

/** A visit with its tests, and its person as the body was known then. */
export interface CasebookVisit {
  readonly visit: Visit;
  /** of a visit that is closed as known at its end, of an open one as known now */
  readonly person: Person;
  /** what a person saw in single repetitions; the automatic verdicts stand beside them */
  readonly verdictsByHand: readonly Entry<VerdictByHand>[];
  /** sets that were counted again by other criteria; the first results stay those that count */
  readonly recounts: readonly Entry<Recount>[];
}

/** Somebody who is tested, with everything that was done. */
export interface CasebookPerson {
  /** as they stand after all corrections */
  readonly person: Person;
  /** what was corrected, field by field, the oldest first */
  readonly amendedFields: readonly AmendedField[];
  /** in the order in which they were begun */
  readonly visits: readonly CasebookVisit[];
  readonly episodes: readonly Entry<Episode>[];
  readonly planItems: readonly Entry<PlanItem>[];
  readonly doneItems: readonly Entry<DoneItem>[];
  readonly morningChecks: readonly Entry<MorningCheck>[];
  readonly runs: readonly Entry<Run>[];
  readonly onFeet: readonly Entry<OnFeet>[];
  /** days of which it is known that every run was written down */
  readonly runsWhole: readonly Entry<RunsWhole>[];
  readonly questionnaireTotals: readonly Entry<QuestionnaireTotal>[];
  readonly reaches: readonly Entry<KneeToWall>[];
  readonly notes: readonly Entry<PersonNote>[];
  readonly targets: readonly Entry<Target>[];
}

/** Why a document stands in nothing that the casebook tells. */
export type CasebookProblemCode =
  | BodyProblemCode
  /** it is about another document that is not there */
  | 'about-nothing'
  /** it amends or removes what cannot be */
  | 'not-amendable'
  /** what it amends would no longer fit its kind */
  | 'no-fit-after';

/** A document that is kept and stands in nothing; it never hides the rest. */
export interface CasebookProblem {
  readonly id: string;
  readonly kind: string;
  readonly code: CasebookProblemCode;
  /** what was expected where; empty where the code says it all */
  readonly detail: string;
}

/** The present state of a clinic. */
export interface Casebook {
  readonly people: readonly CasebookPerson[];
  readonly certificates: readonly Certificate[];
  readonly ownErrors: readonly OwnErrorsEntry[];
  /** changes of the rules of guidance, the oldest first */
  readonly ownRules: readonly OwnRulesEntry[];
  readonly descriptions: readonly DescriptionEntry[];
  /** recordings of other programs, whose they are or waiting for a person */
  readonly takenRecordings: readonly TakenRecording[];
  readonly reliabilitySets: readonly Entry<ReliabilitySet>[];
  readonly audit: readonly Entry<AuditEntry>[];
  readonly problems: readonly CasebookProblem[];
}

/** Documents by what they are about, each list in order. */
function byAbout(documents: readonly StoredDocument[]): ReadonlyMap<string | null, readonly StoredDocument[]> {
  const found = new Map<string | null, StoredDocument[]>();
  for (const one of documents) {
    const list = found.get(one.about);
    if (list === undefined) found.set(one.about, [one]);
    else list.push(one);
  }
  return found;
}

/**
 * The present state of a clinic, made of all its documents and of nothing else: the same documents give the same state.
 *
 * They count in the order of their sequence, bodies are brought to the present version, and amendments are laid over what
 * they are about, see `laidOver`. What cannot be read stands among the problems and hides nothing else.
 *
 * @param documents - all documents of a store or of a backup, in any order [-]
 * @returns people with their visits, what the clinic keeps for itself, and what stands in nothing [-]
 * Source: ours
 */
export function casebookOf(documents: readonly StoredDocument[]): Casebook {
  const ordered = [...documents].sort((a, b) => a.sequence - b.sequence);
  const read = readBodies(ordered);
  const counting = laidOver(read.documents, amendmentRules);
  const about = byAbout(counting.documents);
  const ofKind = (kind: string): readonly StoredDocument[] => counting.documents.filter((one) => one.kind === kind);
  const entries = <Body>(list: readonly StoredDocument[], kind: string): readonly Entry<Body>[] =>
    list.filter((one) => one.kind === kind).map((one) => entryOf<Body>(one));

  const people = ofKind('person').map((begun): CasebookPerson => {
    const own = about.get(begun.id) ?? [];
    const amendments = own.filter(({ kind }) => kind === 'person-amended').map(amendmentOf);
    const [born, person] = [personOf(begun), amended(personOf(begun), amendments)];
    const visitOf = (visit: StoredDocument): CasebookVisit => {
      const inside = about.get(visit.id) ?? [];
      const end = inside.find(({ kind }) => kind === 'visit-closed');
      return {
        visit: withAround(acceptedVisit(foldVisit(visit, inside)), own),
        person: end === undefined ? person : amendedAsOf(born, amendments, end.at),
        verdictsByHand: entries(inside, 'verdict-by-hand'),
        recounts: recountsIn(inside),
      };
    };
    return {
      person,
      amendedFields: amendedFields(begun, amendments),
      visits: own.filter(({ kind }) => kind === 'visit').map(visitOf),
      episodes: entries(own, 'episode'),
      planItems: entries(own, 'plan-item'),
      doneItems: entries(own, 'done-item'),
      morningChecks: entries(own, 'morning-check'),
      runs: entries(own, 'run'),
      onFeet: entries(own, 'on-feet'),
      runsWhole: entries(own, 'runs-whole'),
      questionnaireTotals: entries(own, 'questionnaire-total'),
      reaches: entries(own, 'knee-to-wall'),
      notes: entries(own, 'note'),
      targets: entries(own, 'target'),
    };
  });

  return {
    people,
    certificates: certificatesOf(ofKind('calibration')),
    ownErrors: ownErrorsOf(ofKind('own-error'), ofKind('own-error-back')),
    ownRules: ownRulesOf(ofKind('own-rules'), ofKind('own-rules-back')),
    descriptions: descriptionEntries(ofKind('sensor-description'), ofKind('sensor-description-back')),
    takenRecordings: takenRecordings(ofKind('recording-taken'), ofKind('recording-used')),
    reliabilitySets: entries(counting.documents, 'reliability-set'),
    audit: entries(counting.documents, 'audit-entry'),
    problems: [
      ...read.problems,
      ...counting.refused.map((one) => ({ ...one, detail: '' })),
      ...astray(counting.documents, ordered),
    ],
  };
}

/** Documents about a person or a visit that is not there; what was removed took what is about it along, without a word. */
function astray(counting: readonly StoredDocument[], all: readonly StoredDocument[]): CasebookProblem[] {
  const places = {
    person: new Set(all.filter(({ kind }) => kind === 'person').map(({ id }) => id)),
    visit: new Set(all.filter(({ kind }) => kind === 'visit').map(({ id }) => id)),
  };
  return counting.flatMap(({ id, kind, about }) => {
    const expected = kindOf(kind)?.about;
    if (expected !== 'person' && expected !== 'visit' && expected !== 'person-or-nothing') return [];
    const isThere =
      about === null ? expected === 'person-or-nothing' : places[expected === 'visit' ? 'visit' : 'person'].has(about);
    if (isThere) return [];
    return [{ id, kind, code: 'about-nothing' as const, detail: '' }];
  });
}
