import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent } from './code-links.ts';
import {
  faculty,
  oftenShown,
  provokesNerve,
  provokesRoots,
  recordedOnly,
  slackBeside,
  upperMotor,
  weaknessOf,
} from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Manoeuvres with a name, answered positive or negative. */
export const specialTests = sectionTable(
  'specialTests',
  { scale: 'test-result', sides: 'paired', region: 'lower-limbs', source: recalled('dejong', 'special tests') },
  {
    // Roots
    'straight-leg-raise': {
      label: 'Straight-leg raise',
      bodyPart: 'lower-limb',
      probe: provokesRoots({ L5: 0.5, S1: 0.5 }),
      source: recalled('cochrane-lumbar-2010', 'straight-leg raise'),
    },
    'crossed-straight-leg-raise': {
      label: 'Crossed straight-leg raise: raising the other leg hurts this one',
      bodyPart: 'lower-limb',
      probe: provokesRoots({ L5: 0.5, S1: 0.5 }),
      source: recalled('cochrane-lumbar-2010', 'crossed straight-leg raise'),
    },
    'femoral-stretch': {
      label: 'Femoral stretch (reverse straight-leg raise)',
      bodyPart: 'thigh',
      probe: provokesRoots({ L2: 0.2, L3: 0.4, L4: 0.4 }),
      source: recalled('tawa-2017', 'neurodynamic tests'),
    },
    slump: {
      label: 'Slump test',
      bodyPart: 'lower-limb',
      probe: provokesRoots({ L4: 0.1, L5: 0.45, S1: 0.45 }),
      source: recalled('tawa-2017', 'neurodynamic tests'),
    },
    spurling: {
      label: 'Spurling test',
      region: 'neck',
      bodyPart: 'upper-limb',
      probe: provokesRoots({ C5: 0.15, C6: 0.3, C7: 0.4, C8: 0.15 }),
      source: recalled('wainner-2003', 'Spurling test'),
    },
    'shoulder-abduction-relief': {
      label: 'Relief of arm pain with the hand on the head',
      region: 'upper-limbs',
      bodyPart: 'upper-limb',
      probe: provokesRoots({ C5: 0.15, C6: 0.35, C7: 0.35, C8: 0.15 }),
    },
    'neck-distraction': {
      label: 'Relief of arm pain on traction of the neck',
      region: 'neck',
      bodyPart: 'upper-limb',
      probe: provokesRoots({ C5: 0.15, C6: 0.35, C7: 0.35, C8: 0.15 }),
      source: recalled('wainner-2003', 'distraction test'),
    },
    'upper-limb-tension': {
      label: 'Upper-limb tension test',
      region: 'upper-limbs',
      bodyPart: 'upper-limb',
      probe: provokesRoots({ C5: 0.15, C6: 0.35, C7: 0.35, C8: 0.15 }),
      source: recalled('wainner-2003', 'upper limb tension test A'),
    },

    // Nerves
    'tinel-wrist': {
      label: 'Tinel sign of the median nerve at the wrist',
      region: 'upper-limbs',
      bodyPart: 'wrist',
      hpo: equivalent('HP:0033672', 'Positive carpal Tinel sign'),
      probe: provokesNerve('median-nerve-wrist'),
      source: recalled('dabbagh-2023', 'Tinel test'),
    },
    phalen: {
      label: 'Phalen test',
      region: 'upper-limbs',
      bodyPart: 'wrist',
      hpo: equivalent('HP:0033673', 'Positive Phalen test'),
      probe: provokesNerve('median-nerve-wrist'),
      source: recalled('dabbagh-2023', 'Phalen test'),
    },
    'carpal-compression': {
      label: 'Carpal compression test',
      region: 'upper-limbs',
      bodyPart: 'wrist',
      probe: provokesNerve('median-nerve-wrist'),
      source: recalled('dabbagh-2023', 'carpal compression test'),
    },
    'tinel-elbow': {
      label: 'Tinel sign of the ulnar nerve at the elbow',
      region: 'upper-limbs',
      bodyPart: 'elbow',
      probe: provokesNerve('ulnar-nerve-elbow'),
    },
    'elbow-flexion-test': {
      label: 'Elbow flexion test',
      region: 'upper-limbs',
      bodyPart: 'elbow',
      probe: provokesNerve('ulnar-nerve-elbow'),
    },
    'tinel-ulnar-wrist': {
      label: 'Tinel sign of the ulnar nerve at the wrist',
      region: 'upper-limbs',
      bodyPart: 'wrist',
      probe: provokesNerve('ulnar-nerve-wrist'),
    },
    'tinel-spiral-groove': {
      label: 'Tinel sign at the spiral groove',
      region: 'upper-limbs',
      bodyPart: 'upper-arm',
      probe: provokesNerve('radial-nerve-spiral-groove'),
    },
    'tinel-supraclavicular': {
      label: 'Tinel sign above the clavicle',
      region: 'neck',
      bodyPart: 'shoulder',
      // All three trunks lie under the finger, and the fibres of each run apart in it.
      probe: provokesNerve('upper-trunk', 'middle-trunk', 'lower-trunk', 'lower-trunk-c8', 'lower-trunk-t1'),
    },
    'tinel-fibular-neck': {
      label: 'Tinel sign at the fibular neck',
      bodyPart: 'leg-below-knee',
      probe: provokesNerve('common-fibular-nerve'),
    },
    'tinel-tarsal-tunnel': {
      label: 'Tinel sign at the tarsal tunnel',
      bodyPart: 'ankle',
      probe: provokesNerve('tibial-nerve-tarsal-tunnel'),
    },
    'tinel-inguinal': {
      label: 'Tinel sign below the anterior superior iliac spine',
      bodyPart: 'thigh',
      probe: provokesNerve('lateral-femoral-cutaneous-nerve'),
    },
    froment: {
      label: 'Froment sign',
      region: 'upper-limbs',
      bodyPart: 'hand',
      // Missing in a third with an ulnar palsy: Goldman 2009 (recalled).
      probe: oftenShown(weaknessOf('thumb-adduction'), 0.65),
    },
    'pinch-sign': {
      label: 'Failure to make a round O with thumb and index finger',
      region: 'upper-limbs',
      bodyPart: 'hand',
      probe: weaknessOf('thumb-flexion', 'index-distal-flexion'),
    },
    'trendelenburg-test': {
      label: 'Trendelenburg test, standing on this leg',
      bodyPart: 'hip',
      probe: slackBeside(['hip-abduction']),
    },
    'beevor-sign': {
      label: 'Beevor sign',
      sides: 'midline',
      region: 'trunk',
      hpo: equivalent('HP:0030664', "Beevor's sign"),
      probe: weaknessOf('trunk-flexion'),
    },

    // Cord and upper motor neuron
    lhermitte: {
      label: 'Lhermitte sign',
      sides: 'midline',
      region: 'neck',
      hpo: equivalent('HP:0032504', "Lhermitte's sign"),
      probe: recordedOnly,
    },
    'pronator-drift': {
      label: 'Pronator drift',
      region: 'upper-limbs',
      bodyPart: 'upper-limb',
      probe: upperMotor('upper'),
    },
    'leg-drift': { label: 'Leg drift', bodyPart: 'lower-limb', probe: upperMotor('lower') },
    'forearm-rolling': {
      label: 'Forearm rolling: this arm is orbited by the other',
      region: 'upper-limbs',
      bodyPart: 'upper-limb',
      probe: upperMotor('upper'),
    },
    hoffmann: {
      label: 'Hoffmann sign',
      region: 'upper-limbs',
      bodyPart: 'hand',
      hpo: equivalent('HP:0031993', 'Hoffmann sign'),
      probe: upperMotor('upper'),
      source: recalled('hoffmann-fogarty-2018', 'Hoffmann sign'),
    },
    tromner: { label: 'Trömner sign', region: 'upper-limbs', bodyPart: 'hand', probe: upperMotor('upper') },
    'inverted-brachioradialis': {
      label: 'Inverted brachioradialis reflex',
      region: 'upper-limbs',
      bodyPart: 'forearm',
      probe: upperMotor('upper'),
      source: recalled('cook-2010', 'inverted supinator sign'),
    },
    'finger-escape': {
      label: 'Finger escape sign',
      region: 'upper-limbs',
      bodyPart: 'hand',
      probe: upperMotor('upper'),
    },
    'grip-release': {
      label: 'Grip and release test slowed',
      region: 'upper-limbs',
      bodyPart: 'hand',
      probe: upperMotor('upper'),
    },
    'crossed-adductor': { label: 'Crossed adductor response', bodyPart: 'thigh', probe: upperMotor('lower') },
    chaddock: {
      label: 'Chaddock sign',
      bodyPart: 'foot',
      hpo: equivalent('HP:0010875', 'Chaddock reflex'),
      probe: upperMotor('lower'),
    },
    oppenheim: {
      label: 'Oppenheim sign',
      bodyPart: 'foot',
      hpo: equivalent('HP:0030180', 'Oppenheim reflex'),
      probe: upperMotor('lower'),
    },
    gordon: {
      label: 'Gordon sign',
      bodyPart: 'foot',
      hpo: equivalent('HP:0030181', 'Gordon reflex'),
      probe: upperMotor('lower'),
    },

    // Fatigue
    'sustained-upgaze': {
      label: 'Fatigue of the eyelid on sustained upward gaze',
      region: 'head',
      bodyPart: 'eye',
      probe: faculty('eye-movement-fatigue'),
      source: recalled('scherer-2005', 'bedside tests'),
    },
    'ice-pack': {
      label: 'Ice-pack test of the eyelid',
      region: 'head',
      bodyPart: 'eye',
      probe: faculty('eye-movement-fatigue'),
      source: recalled('scherer-2005', 'ice test'),
    },
    'lid-twitch': {
      label: 'Lid twitch on looking up again',
      region: 'head',
      bodyPart: 'eye',
      probe: faculty('eye-movement-fatigue'),
      source: recalled('scherer-2005', 'bedside tests'),
    },
    'limb-fatigability': {
      label: 'Fatigue of limb power on repeated effort',
      sides: 'optional',
      region: 'upper-limbs',
      bodyPart: 'upper-limb',
      hpo: equivalent('HP:0030197', 'Fatigable weakness of skeletal muscles'),
      probe: faculty('fatigability'),
    },
    'counting-fatigability': {
      label: 'Voice tires on counting aloud',
      sides: 'midline',
      region: 'head',
      hpo: equivalent('HP:0030194', 'Fatigable weakness of speech muscles'),
      probe: faculty('fatigability'),
    },
    'post-exercise-facilitation': {
      label: 'Reflex or power returns after brief effort',
      sides: 'optional',
      region: 'lower-limbs',
      bodyPart: 'lower-limb',
      probe: faculty('facilitation'),
      source: recalled('lems-titulaer-2011', 'clinical features'),
    },

    // Meninges, balance, effort
    'chvostek-or-trousseau': {
      label: 'Chvostek or Trousseau sign',
      sides: 'midline',
      probe: recordedOnly,
      source: commonPractice,
    },
    'neck-stiffness': {
      label: 'Neck stiffness',
      sides: 'midline',
      region: 'neck',
      hpo: equivalent('HP:0031179', 'Nuchal rigidity'),
      probe: faculty('meningeal'),
      source: commonPractice,
    },
    kernig: { label: 'Kernig sign', sides: 'optional', bodyPart: 'lower-limb', probe: faculty('meningeal') },
    brudzinski: { label: 'Brudzinski sign', sides: 'midline', region: 'neck', probe: faculty('meningeal') },
    'dix-hallpike': {
      label: 'Dix-Hallpike manoeuvre, this ear down',
      region: 'head',
      bodyPart: 'ear',
      probe: faculty('canal-balance'),
    },
    'supine-roll': {
      label: 'Supine roll test, this ear down',
      region: 'head',
      bodyPart: 'ear',
      probe: faculty('canal-balance'),
    },
    fukuda: {
      label: 'Stepping on the spot with eyes closed: turns to this side',
      bodyPart: 'lower-limb',
      probe: faculty('balance-to-side'),
    },
    hoover: {
      label: 'Hoover sign',
      bodyPart: 'lower-limb',
      probe: faculty('effort'),
    },
    'hip-abductor-sign': { label: 'Hip abductor sign', bodyPart: 'lower-limb', probe: faculty('effort') },
    'give-way-weakness': {
      label: 'Give-way weakness',
      sides: 'optional',
      bodyPart: 'lower-limb',
      probe: faculty('effort'),
    },
    'midline-splitting': {
      label: 'Sensory loss that stops exactly at the midline, also for vibration',
      region: 'trunk',
      bodyPart: 'trunk',
      probe: faculty('effort'),
    },
    'single-breath-count': {
      label: 'Single-breath count of 19 or less',
      sides: 'midline',
      region: 'trunk',
      probe: faculty('breathing'),
      source: recalled('gbs-lawn-2001', 'prediction of ventilation'),
    },
    'neurogenic-claudication-relief': {
      label: 'Leg symptoms on standing, eased by bending forward',
      sides: 'optional',
      bodyPart: 'lower-limb',
      probe: recordedOnly,
    },
  },
);
