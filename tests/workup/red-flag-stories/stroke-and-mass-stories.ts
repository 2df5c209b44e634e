import { site } from '../../support/bedside.ts';
import { days, has, hours, months, on, power, type Story, signs, weeks } from './story.ts';

const numbFeet = [{ modality: 'joint-position', site: 'great-toe', side: 'both', result: 'absent' }];

/** Strokes whose moment nobody saw or that show one sign, masses without headache, and what resembles them. */
export const strokeAndMassStories: readonly Story[] = [
  {
    flag: 'suspected-stroke',
    by: 'eyes that do not move up and down come from the midbrain or thalamus (Brazis); over weeks it is another disease',
    at: site('thalamus', 'hemisphere', 0.6),
    raised: { history: { onset: { pace: 'acute' } }, findings: { cranialNerves: signs('vertical-gaze-palsy') } },
    not: { history: { onset: { pace: 'subacute' } }, findings: { cranialNerves: signs('vertical-gaze-palsy') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'a lower face alone is the brain; with a weak forehead it is the facial nerve (Adams and Victor)',
    raised: { history: { onset: days }, findings: { cranialNerves: on('left', 'lower-facial-weakness') } },
    not: {
      history: { onset: days },
      findings: { cranialNerves: on('left', 'lower-facial-weakness', 'upper-facial-weakness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a face that is told to have fallen at once, before anybody looked at it (NICE NG128); with a weak forehead it is the nerve',
    raised: { history: { onset: hours, symptoms: [{ key: 'face-droop', side: 'left', present: true }] } },
    not: {
      history: { onset: hours, symptoms: [{ key: 'face-droop', side: 'left', present: true }] },
      findings: { cranialNerves: on('left', 'facial-weakness', 'upper-facial-weakness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'two of face, arm and speech told at once (NICE NG128); what fails on both sides over days has its nerves ill',
    raised: {
      history: {
        onset: days,
        symptoms: [...has('slurred-speech'), { key: 'arm-weakness', side: 'right', present: true }],
      },
    },
    not: {
      history: {
        onset: days,
        symptoms: [
          { key: 'face-droop', side: 'both', present: true },
          { key: 'leg-weakness', side: 'both', present: true },
        ],
      },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a week of a deficit that lies in the brain, where arteries are at risk (NICE NG128)',
    at: site('cortex-hand-area', 'hemisphere', 0.7),
    raised: {
      history: { onset: { pace: 'acute', durationDays: 7 }, conditions: has('hypertension') },
      findings: { power: power('left', '2', 'finger-abduction') },
    },
    not: {
      history: { onset: { pace: 'chronic', durationDays: 90 }, conditions: has('hypertension') },
      findings: { power: power('left', '2', 'finger-abduction') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'a Horner syndrome with a fourth nerve lies in the brainstem; with pain of the eye in the cavernous sinus (Brazis)',
    at: site('trochlear-nerve', 'cranial-nerve'),
    raised: {
      person: { ageYears: 66 },
      history: { onset: { pace: 'acute', durationDays: 2 } },
      findings: { cranialNerves: [...on('right', 'fourth-nerve-palsy'), ...on('left', 'horner-syndrome')] },
    },
    not: {
      person: { ageYears: 66 },
      history: { onset: { pace: 'acute', durationDays: 2 }, symptoms: has('eye-pain') },
      findings: { cranialNerves: [...on('right', 'fourth-nerve-palsy'), ...on('left', 'horner-syndrome')] },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'one half of the face numb at once, at an age of strokes (NICE NG128); after a tooth was drawn it is its nerve',
    at: site('trigeminal-nerve', 'cranial-nerve'),
    raised: {
      person: { ageYears: 73 },
      history: { onset: hours, symptoms: has('numbness') },
      findings: { cranialNerves: on('left', 'facial-numbness') },
    },
    not: {
      person: { ageYears: 73 },
      history: { onset: hours, exposures: has('dental-procedure') },
      findings: { cranialNerves: on('left', 'facial-numbness') },
    },
  },
  {
    flag: 'suspected-stroke',
    by: 'speech and an arm at once before anybody has examined (NICE NG128); with fever another flag speaks',
    raised: { history: { onset: { pace: 'acute' }, symptoms: has('slurred-speech', 'arm-weakness') } },
    not: { history: { onset: { pace: 'acute' }, symptoms: has('slurred-speech', 'arm-weakness', 'fever') } },
  },
  {
    flag: 'suspected-stroke',
    by: 'muscles of one joint after an operation there are those of a nerve; a whole leg is not (Stewart)',
    at: site('cortex-anterior-cerebral', 'hemisphere', 0.5),
    raised: {
      history: { onset: hours, exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'hip-flexion', 'ankle-dorsiflexion') },
    },
    not: {
      history: { onset: hours, exposures: has('recent-surgery') },
      findings: { power: power('left', '2', 'hip-abduction', 'hip-internal-rotation') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'two nerves of one corner of the skull base, undated (Brazis); a palsy that came at once is another matter',
    at: site('cerebellopontine-angle', 'cranial-nerve', 0.5),
    raised: { findings: { cranialNerves: on('left', 'facial-numbness', 'hearing-loss') } },
    not: { history: { onset: hours }, findings: { cranialNerves: on('left', 'facial-numbness', 'hearing-loss') } },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'known cancer and a nerve of the eye (NICE NG127: spread); the same without cancer',
    at: site('abducens-nerve', 'cranial-nerve'),
    raised: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { cranialNerves: on('right', 'eye-abduction-weakness') },
    },
    not: { history: { onset: weeks }, findings: { cranialNerves: on('right', 'eye-abduction-weakness') } },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'sight that fades over weeks with an eye that does not move is pressed upon (Adams and Victor); what rests is not',
    at: site('optic-nerve', 'visual-pathway', 0.2),
    raised: {
      history: { onset: weeks, course: 'progressive' },
      findings: { cranialNerves: [...on('both', 'reduced-visual-acuity'), ...on('left', 'eye-abduction-weakness')] },
    },
    not: {
      history: { onset: weeks, course: 'static' },
      findings: { cranialNerves: [...on('both', 'reduced-visual-acuity'), ...on('left', 'eye-abduction-weakness')] },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'sight of both eyes that fades over weeks is pressed upon (NICE NG127); under ethambutol it is poisoned (Adams and Victor)',
    at: site('optic-nerve', 'visual-pathway', 0.9),
    raised: {
      history: { onset: weeks, course: 'progressive' },
      findings: { cranialNerves: on('both', 'reduced-visual-acuity', 'central-scotoma') },
    },
    not: {
      history: { onset: weeks, course: 'progressive', medications: has('ethambutol') },
      findings: { cranialNerves: on('both', 'reduced-visual-acuity', 'central-scotoma') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'known cancer and a deaf ear (NICE NG127: spread); cisplatin deafens both ears by itself',
    at: site('cochlear-nerve', 'cranial-nerve', 0.9),
    raised: {
      history: { onset: weeks, conditions: has('cancer') },
      findings: { cranialNerves: on('both', 'hearing-loss') },
    },
    not: {
      history: { onset: weeks, conditions: has('cancer'), medications: has('cisplatin') },
      findings: { cranialNerves: on('both', 'hearing-loss') },
    },
  },
  {
    flag: 'suspected-space-occupying-lesion',
    by: 'HIV and chorea of one side (Adams and Victor, toxoplasmosis); of both sides it may be anything',
    raised: {
      history: { onset: months, conditions: has('hiv-infection') },
      findings: { involuntaryMovements: on('left', 'chorea') },
    },
    not: {
      history: { onset: months, conditions: has('hiv-infection') },
      findings: { involuntaryMovements: on('both', 'chorea') },
    },
  },
  {
    flag: 'head-injury-with-deficit',
    by: 'feet that freeze and grow worse after a knock are a subdural haematoma (NICE NG232); what is better is not',
    raised: {
      history: { onset: { pace: 'subacute', durationDays: 42 }, course: 'progressive', conditions: has('head-injury') },
      findings: { gait: signs('freezing') },
    },
    not: {
      history: { onset: { pace: 'subacute', durationDays: 42 }, course: 'improving', conditions: has('head-injury') },
      findings: { gait: signs('freezing') },
    },
  },
  {
    flag: 'child-with-progressive-deficit',
    by: 'NICE NG127: weeks of a palsy of gaze in a child, of which nobody has said that it rests',
    raised: {
      person: { ageYears: 5 },
      history: { onset: weeks },
      findings: { cranialNerves: on('both', 'gaze-palsy') },
    },
    not: {
      person: { ageYears: 5 },
      history: { onset: weeks, course: 'static' },
      findings: { cranialNerves: on('both', 'gaze-palsy') },
    },
  },
  {
    flag: 'orbital-or-cavernous-sinus-infection',
    by: 'an eye pushed out, painful and still, undated (Adams and Victor); with an overactive thyroid it is that',
    raised: {
      history: { symptoms: has('eye-pain') },
      findings: { cranialNerves: on('left', 'ptosis', 'ophthalmoplegia'), inspection: on('left', 'proptosis') },
    },
    not: {
      history: { symptoms: has('eye-pain'), conditions: has('hyperthyroidism') },
      findings: {
        cranialNerves: on('left', 'ophthalmoplegia', 'unreactive-pupil'),
        inspection: on('left', 'proptosis'),
      },
    },
  },
  {
    flag: 'painful-horner-syndrome',
    by: 'pain between the shoulder blades with a drooping lid and a small pupil: first thoracic root or tip of the lung',
    raised: {
      history: { onset: days, symptoms: has('thoracic-back-pain') },
      findings: { cranialNerves: on('left', 'ptosis', 'small-pupil') },
    },
    not: {
      history: { onset: days, symptoms: has('back-pain') },
      findings: { cranialNerves: on('left', 'ptosis', 'small-pupil') },
    },
  },
  {
    flag: 'neuromuscular-respiratory-failure',
    by: 'short breath with lids and eyes that fail within days (Lawn 2001: do not wait); with strong eyes it is the lung',
    at: site('presynaptic-junction', 'junction'),
    raised: {
      history: { onset: hours, symptoms: has('breathlessness') },
      findings: { cranialNerves: on('both', 'ptosis', 'ophthalmoplegia') },
    },
    not: { history: { onset: hours, symptoms: has('breathlessness') } },
  },
  {
    flag: 'suspected-spinal-infection',
    by: 'a tender spine after an operation there and legs that fail, without fever; the same without the operation',
    raised: {
      history: { onset: days, symptoms: has('back-pain', 'leg-weakness'), conditions: has('spinal-surgery') },
      findings: { inspection: signs('spinal-tenderness') },
    },
    not: {
      history: { onset: days, symptoms: has('back-pain', 'leg-weakness') },
      findings: { inspection: signs('spinal-tenderness') },
    },
  },
  {
    flag: 'suspected-cord-compression',
    by: 'lost feeling of days, where the cord is much the likeliest place (NICE NG234); what has rested for months is not new',
    at: site('spinal-cord-posterior', 'cord', 0.8),
    raised: { history: { onset: days }, findings: { sensation: numbFeet } },
    not: { history: { onset: months, course: 'static' }, findings: { sensation: numbFeet } },
  },
  {
    flag: 'suspected-cauda-equina-syndrome',
    by: 'a numb saddle and a full bladder for years that nobody has imaged (GIRFT); what has come to rest is known',
    raised: {
      history: { onset: { durationDays: 2500 } },
      findings: { sphincters: signs('saddle-anaesthesia', 'palpable-bladder') },
    },
    not: {
      history: { onset: { durationDays: 2500 }, course: 'static' },
      findings: { sphincters: signs('saddle-anaesthesia', 'palpable-bladder') },
    },
  },
];
