import type { Fault } from '../kernel/errors.ts';
import { itemNamed } from './catalogue/catalogue.ts';
import { investigationKeys } from './catalogue/investigations.ts';
import { sectionKeys } from './catalogue/item.ts';
import { readComaScale } from './coma-scale-entries.ts';
import { isLostItem, limbLossFaults, lostParts, sideFaults, withoutRepeats } from './contradictions.ts';
import type { Exam } from './exam.ts';
import { examinedAtProblem } from './examined-at.ts';
import { declaredNormal, findingsOf, inExamOrder } from './expand.ts';
import { throwIfAny } from './faults/report.ts';
import { sizeFaults } from './faults/sizes.ts';
import { type SoundEntry, type SoundParts, soundParts } from './faults/sound-parts.ts';
import type { Finding, NormalStatement } from './finding.ts';
import { readStatements } from './normal-statements.ts';
import { readHistory } from './read-history.ts';
import type { ComaScaleEntry, ExamRequest, FindingEntry, HistoryEntry, ResultEntry } from './request.ts';
import { readResults } from './results/read-results.ts';
import type { ExamPurpose } from './schema/exam-schemas.ts';
import { examValidators, type QuickValidators } from './schema/validator.ts';

export interface ExamReader {
  /**
   * The exam that a request body says, flat and in catalogue order. Nothing is dropped: what cannot be read is a fault.
   * @param body            parsed JSON of any shape
   * @param options.purpose whether the exam is kept (identifier and subject required) or only localised
   * @param options.now     the present, against which the date of the exam is checked
   * @throws ExamInvalidError with every fault of the body, at most a hundred
   */
  read(body: unknown, options: { readonly purpose: ExamPurpose; readonly now: Date }): Exam;
  /** Does now what the first wrong body would wait for. */
  prepare(): void;
}

/**
 * Builds and compiles the schemas, once; the reader keeps nothing between calls.
 * @param quick the validators of the first step, when the build has compiled them already
 */
export function createExamReader(quick?: QuickValidators): ExamReader {
  const validators = examValidators(quick);
  return {
    prepare: validators.prepare,
    read(body, { purpose, now }) {
      throwIfAny(sizeFaults(body));
      const formFaults = validators[purpose](body);
      // What has the right form is read even so: faults of content then show together with faults of form.
      const parts = soundParts(body, formFaults);
      const { history, faults: historyFaults } = readHistory((list) => parts.entries<HistoryEntry>('history', list));
      const { findings: stated, faults: repeatFaults } = withoutRepeats(readFindings(parts));
      const { scales, faults: scaleFaults } = readComaScale(comaScaleEntries(parts));
      const { statements, faults: statementFaults } = readStatements(parts.entries<NormalStatement>('otherwiseNormal'));
      const { results, faults: resultFaults } = readResults(parts.entries<ResultEntry>('results'));
      const lost = lostParts(stated);
      throwIfAny([
        ...formFaults,
        ...dateFaults(parts.text('examinedAt'), now),
        ...historyFaults,
        ...repeatFaults,
        ...sideFaults(stated),
        ...limbLossFaults(stated, lost),
        ...scaleFaults,
        ...statementFaults,
        ...resultFaults,
      ]);
      const declared = declaredNormal(statements, stated, (item, side) => isLostItem(item, side, lost));
      return {
        ...headOf(body as ExamRequest),
        history,
        findings: inExamOrder([...stated, ...declared]),
        scales,
        otherwiseNormal: statements,
        results,
        ...requestsOf(body as ExamRequest),
      };
    },
  };
}

function dateFaults(examinedAt: string | undefined, now: Date): readonly Fault[] {
  const problem = examinedAt === undefined ? null : examinedAtProblem(examinedAt, now);
  return problem === null ? [] : [{ pointer: '/examinedAt', code: 'DATE', message: problem }];
}

function readFindings(parts: SoundParts): readonly Finding[] {
  return sectionKeys.flatMap((section) =>
    parts.entries<FindingEntry>('findings', section).flatMap(({ entry, pointer }) => {
      // None for the coma scale, which is scored by parts and is not an item.
      const item = itemNamed(section, entry);
      return item === undefined ? [] : findingsOf(item, entry, pointer);
    }),
  );
}

function comaScaleEntries(parts: SoundParts): readonly SoundEntry<ComaScaleEntry>[] {
  return parts
    .entries<ComaScaleEntry>('findings', 'higherFunction')
    .filter(({ entry }) => Object.hasOwn(entry, 'scale'));
}

function requestsOf({ requests }: ExamRequest): Pick<Exam, 'requests'> {
  return requests === undefined ? {} : { requests: investigationKeys.filter((key) => requests.includes(key)) };
}

function headOf(request: ExamRequest) {
  const { identifier, subject, encounter, history } = request;
  return {
    ...(identifier === undefined ? {} : { identifier }),
    status: request.status ?? 'final',
    ...(subject === undefined ? {} : { subject }),
    ...(encounter === undefined ? {} : { encounter }),
    performer: request.performer ?? [],
    examinedAt: request.examinedAt,
    person: request.person ?? {},
    onset: history?.onset ?? {},
    ...(history?.course === undefined ? {} : { course: history.course }),
  } satisfies Partial<Exam>;
}
