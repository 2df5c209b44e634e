import type { Site } from '../localisation/hypothesis.ts';
import { columnName } from '../localisation/inference/columns.ts';
import type { Evidence, RankedLocalisation } from '../localisation/localisation.ts';
import { isDiffuse } from '../localisation/localisation.ts';
import { siteCoding } from '../localisation/sites.ts';
import type { AskedTarget } from './asked-items.ts';
import { examineEfficiently, targetOf } from './efficient-examiner.ts';
import { askedFor, examinePatient } from './examine-patient.ts';
import { judgeCommitment } from './judge-commitment.ts';
import { neuraxisParts, partOfKind } from './neuraxis-parts.ts';
import type { PracticePatient } from './patient.ts';
import type { PracticeModel } from './practice-model.ts';
import type { CommittedSite } from './practice-sites.ts';

/** Leading sites that are shown. */
const rankedAtMost = 5;

/**
 * What a learner hears who has committed to a site: the lesion, how near it was, why each finding follows from it, what
 * the findings supported, what would have told more, and how few items would have done.
 * Yields now and then, so that a caller can do other things in between.
 */
export function* answerCommitment(
  model: PracticeModel,
  patient: PracticePatient,
  asked: readonly AskedTarget[],
  { site, hypothesis }: CommittedSite,
) {
  const found = asked.flatMap(({ target }) => patient.find(target) ?? []);
  const exam = patient.examOf(found);
  const { localisations, conclusion } = model.localiser.localise(exam);
  yield;
  const { probability, explanation, tellingApart } = model.localiser.confront(exam, patient.lesion, hypothesis);
  yield;
  const pointers = new Map(asked.map(({ pointer, target }) => [columnName(target), pointer]));
  const pointerOf = new Map(exam.findings.map((one) => [one.id, pointers.get(columnName(one)) ?? null]));
  const efficient = yield* examineEfficiently(model, patient);
  return {
    lesion: { ...described(patient.site), code: siteCoding(patient.site) },
    commitment: described(site),
    verdict: judgeCommitment(patient.site, site),
    reasons: reasonsOf(explanation, (id) => pointerOf.get(id) ?? null),
    supported: {
      conclusion,
      probabilityOfLesion: probability,
      localisations: localisations.slice(0, rankedAtMost).map(ranked),
    },
    leftOut: tellingApart.map((next) => {
      const target = targetOf(next);
      return {
        ...(target === undefined ? { item: next.item } : askedFor(target)),
        label: next.label,
        because: next.because,
        gainBits: next.gainBits,
        ...(target === undefined ? {} : shownOf(patient, target)),
      };
    }),
    items: { yours: found.length, efficient: efficient.isSure ? efficient.steps.length : null },
    efficient,
  };
}

function shownOf(patient: PracticePatient, target: AskedTarget['target']): { readonly text?: string } {
  const [shown] = examinePatient(patient, [{ pointer: '', target }]).shown;
  return shown === undefined ? {} : { text: shown.text };
}

/** A site in the words of the practice. */
function described(site: Site) {
  const part = partOfKind(site.kind);
  return {
    site: site.key,
    label: site.label,
    side: site.side,
    level: site.level,
    part,
    partLabel: neuraxisParts[part].label,
    isDiffuse: isDiffuse(site),
  };
}

function ranked({ site, label, side, level, levelRange, probability }: RankedLocalisation) {
  return { site, label, side, level, levelRange, probability };
}

/** Whether a finding follows from the lesion: an abnormal one it makes, a normal one it leaves alone. */
export type Stance = 'follows' | 'spared' | 'unexplained' | 'unexpected';

interface Reason {
  /** JSON Pointer of the item in the body; null for what was told. */
  readonly examined: string | null;
  readonly text: string;
  readonly stance: Stance;
  readonly because: string;
}

/** Every finding once, what the lesion makes first. */
function reasonsOf(
  { supporting, against, unexplained }: Record<'supporting' | 'against' | 'unexplained', readonly Evidence[]>,
  pointerOf: (findingId: string) => string | null,
): readonly Reason[] {
  const left = new Set(unexplained.map(({ findingId }) => findingId));
  const reason = (one: Evidence, stance: Stance): Reason => ({
    examined: pointerOf(one.findingId),
    text: one.text,
    stance,
    because: one.because,
  });
  return [
    ...supporting.map((one) => reason(one, one.abnormal ? 'follows' : 'spared')),
    ...unexplained.map((one) => reason(one, 'unexplained')),
    ...against.filter(({ findingId }) => !left.has(findingId)).map((one) => reason(one, 'unexpected')),
  ];
}
