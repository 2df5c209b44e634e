import { commonPractice, read, recalled, type Source } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { actionOnMedicine } from './harmful-medicines.ts';
import { isHeadSeen } from './head-images.ts';
import { isOfTheLungApex } from './lung-apex.ts';
import { hasToxicLithium } from './measured-poison.ts';
import { isOutsideTheCanal } from './outside-canal.ts';
import { centralSigns, weakHalf } from './sudden-deficit.ts';
import { isUnder } from './thresholds.ts';

/** What is said in place of a flag's usual action, where the danger is one that has a remedy of its own. */
interface ActionOfACase {
  readonly flag: string;
  readonly when: (facts: BedsideFacts) => boolean;
  readonly action: string;
  readonly source: Source;
}

/** The first that holds is said. */
const actionsOfCases: readonly ActionOfACase[] = [
  {
    flag: 'suspected-poisoning',
    when: hasToxicLithium,
    action:
      'Stop lithium now, and any diuretic, ACE inhibitor or NSAID; saline; kidney team about dialysis, which a clouded mind, a fit or failing kidneys ask for; level again in 6 hours.',
    source: read('extrip-lithium-2015', 'recommendations: consciousness, seizures, kidney function'),
  },
  {
    flag: 'suspected-poisoning',
    when: ({ told }) => told('organophosphate').length > 0,
    action:
      'Airway and oxygen; atropine, doubled every five minutes until the chest is dry and the heart quick; an oxime early; undress and wash, staff protected; poisons service.',
    source: recalled('organophosphate-2004', 'early management'),
  },
  {
    flag: 'suspected-poisoning',
    when: ({ told }) => told('carbon-monoxide').length > 0,
    action: 'Out of the fumes; oxygen at the highest concentration now, before any level; call the poisons service.',
    source: recalled('adams-victor', 'carbon monoxide'),
  },
  {
    flag: 'suspected-poisoning',
    when: ({ told }) => told('toxic-alcohol').length > 0,
    action: 'Airway, breathing, circulation; fomepizole or ethanol before the level; dialysis and poisons service now.',
    source: recalled('adams-victor', 'methanol'),
  },
  {
    flag: 'dangerous-sodium-or-calcium',
    when: (facts) => {
      const isUnwell = facts.told('ongoing-seizure', 'seizure').length > 0 || facts.query.abnormal(deeply).length > 0;
      const sodium = facts.query.quantity('sodium', 'mmol/L');
      return isUnwell && sodium !== undefined && isUnder(sodium, 125);
    },
    action:
      'While the person convulses or cannot be roused, hypertonic saline 3 %, 150 mL over 20 minutes, now; after that sodium rises by no more than 10 mmol/L in a day.',
    source: recalled('hyponatraemia-2014', 'hyponatraemia with severe symptoms'),
  },
  {
    flag: 'suspected-encephalitis',
    when: ({ query }) => {
      const platelets = query.quantity('platelets', '10*9/L');
      return platelets !== undefined && isUnder(platelets, fewPlatelets);
    },
    action:
      'Aciclovir without delay; MRI now; platelets are short: haematology and an image of the head before a lumbar puncture is weighed.',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    flag: 'suspected-encephalitis',
    when: isFocalAndUnseen,
    action:
      'Aciclovir without delay; with a focal sign or a fit the head is imaged before the lumbar puncture, MRI where it is at hand.',
    source: recalled('nice-ng240', 'when lumbar puncture is unsafe'),
  },
  {
    flag: 'suspected-wernicke-encephalopathy',
    when: ({ query }) => {
      const magnesium = query.quantity('magnesium', 'mmol/L');
      return magnesium !== undefined && isUnder(magnesium, lowMagnesium);
    },
    action:
      'Intravenous thiamine before any carbohydrate, and magnesium with it, without which thiamine does not work.',
    source: commonPractice,
  },
  {
    flag: 'suspected-spinal-haematoma',
    when: isOutsideTheCanal,
    action:
      'CT of the abdomen and pelvis now; reverse the anticoagulant with specialist advice; blood count, and blood ready.',
    source: commonPractice,
  },
  {
    flag: 'painful-horner-syndrome',
    when: isOfTheLungApex,
    action:
      'Chest radiograph or CT of the chest and the urgent way for suspected cancer: a tumour at the apex of the lung until it is excluded.',
    source: recalled('nice-ng12', 'lung cancer'),
  },
];

/** In 10*9/L; guidance on meningitis of children holds a puncture back below it. */
const fewPlatelets = 100;

/** In mmol/L; under it serum magnesium is low in most laboratories. From memory. */
const lowMagnesium = 0.7;

const deeply = ['higher-function/coma', 'higher-function/stupor', 'involuntary-movements/seizure-seen'];

/** A sign of one place in the brain or a fit, before any image of the head. */
export function isFocalAndUnseen(facts: BedsideFacts): boolean {
  const focal =
    [...centralSigns(facts.query), ...weakHalf(facts)].length + facts.told('seizure', 'ongoing-seizure').length;
  return !isHeadSeen(facts) && focal > 0;
}

/** What to say of this flag here; undefined where its usual action holds. */
export function actionHere(flag: string, facts: BedsideFacts): Pick<ActionOfACase, 'action' | 'source'> | undefined {
  if (flag === 'harmful-medicine') return actionOnMedicine(facts);
  return actionsOfCases.find((one) => one.flag === flag && one.when(facts));
}
