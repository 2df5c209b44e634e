import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import { recalled } from '../../kernel/cite.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { eyeMovementSigns } from './eye-movement-signs.ts';
import { isOfBothHalves } from './not-of-a-mass.ts';
import { each, none, type RaisingStory } from './story.ts';
import { brainSigns, centralSigns, onOneSide, weakHalf } from './sudden-deficit.ts';

const flag = 'suspected-space-occupying-lesion';
const twoYears = 730;

const ofMasses: readonly RaisingStory[] = [
  {
    // Loss of function of the brain that grows over days to two years, with headache or without.
    flag,
    check: (facts) => {
      const { exam, query } = facts;
      if (exam.course !== 'progressive' || !mayBeGrowing(facts)) return none;
      const ofSight = areEyesPoisoned(facts) ? [] : (['visual-pathway'] as const);
      const inBrain = facts.kindProbability('hemisphere', 'brainstem', 'cerebellum', ...ofSight) >= 0.5;
      const signs = query.abnormal([...brainSigns, ...corticalSigns]);
      // Over years the cerebellum mostly degenerates.
      const { pace } = exam.onset;
      // Arm and leg of one side that weaken together are no degeneration, however slowly they do.
      const isHalfBody = weakHalf(facts).length > 0;
      const isWeeks = isHalfBody || (pace === undefined ? facts.beganWithin(183) === 'yes' : pace !== 'chronic');
      if (inBrain && isWeeks) return findingReasons(facts.abnormalFindings, 4);
      // A plain sign of the brain by itself, over weeks.
      if (pace === 'subacute' && facts.beganWithin(183) === 'yes') {
        const plain = centralSigns(query);
        if (plain.length > 0 && facts.trunkSensoryLoss.length === 0) return findingReasons(plain, 3);
      }
      return each(findingReasons(signs, 4), [
        ...facts.told('headache', 'new-headache', 'morning-headache', 'vomiting', 'seizure', 'behaviour-change'),
        ...malignancy(facts),
        ...facts.told('immunosuppression', 'hiv-infection'),
      ]);
    },
    source: recalled('nice-ng127'),
  },
  {
    // The same in days that nobody has counted, with a headache or a fit.
    flag,
    check: (facts) => {
      const { onset, course } = facts.exam;
      const isUncounted = onset.pace === 'acute' && onset.durationDays === undefined && course === 'progressive';
      if (!isUncounted || facts.brainProbability < 0.5 || facts.query.result('mri-brain') !== undefined) return none;
      const signs = [...facts.query.abnormal([...brainSigns, ...corticalSigns]), ...weakHalf(facts)];
      return each(
        facts.told('headache', 'new-headache', 'morning-headache', 'seizure', 'vomiting'),
        findingReasons(signs, 3),
      );
    },
    source: recalled('nice-ng127', 'progressive subacute loss of central neurological function'),
  },
  {
    // The same of which nobody says since when nor how it goes on, with a headache, a fit, vomiting or a body that wastes.
    flag,
    check: (facts) => {
      const isUndated = facts.isUntimed && mayBeGrowing(facts);
      const known = facts.told('epilepsy', 'migraine', 'similar-attacks-before', 'stroke', 'head-injury', 'dementia');
      if (!isUndated || known.length > 0 || facts.brainProbability < 0.5) return none;
      const signs = facts.query.abnormal([
        ...brainSigns,
        ...corticalSigns,
        'higher-function/apathy',
        'higher-function/disinhibition',
      ]);
      return each(
        findingReasons([...signs, ...weakHalf(facts)], 3),
        facts.told('headache', 'new-headache', 'morning-headache', 'seizure', 'vomiting', 'weight-loss'),
      );
    },
    source: recalled('nice-ng127', 'progressive subacute loss of central neurological function'),
  },
  {
    // A person who changes, or who loses words or thought, over weeks, with anything found that belongs to the hemispheres.
    flag,
    check: (facts) => {
      const { exam, query } = facts;
      const isWeeks = exam.onset.pace !== 'chronic' && facts.beganWithin(183) === 'yes';
      if (exam.course !== 'progressive' || !isWeeks || !mayBeGrowing(facts)) return none;
      // Where the cord or the nerves explain the gait, it says nothing of the hemispheres; visions and unrest are of poison or want of it too.
      const isElsewhere = facts.kindProbability('cord', 'nerve', 'polyneuropathy', 'root') >= 0.5;
      const signs = query.abnormalWhere(
        ({ item }) => item.section === 'higherFunction' && !(isElsewhere && ofAnyIllBrain.has(item.key)),
      );
      const gait = isElsewhere ? [] : query.abnormal(['gait/magnetic', 'gait/shuffling', 'gait/ataxic']);
      return each(
        facts.told('behaviour-change', 'cognitive-change', 'speech-difficulty'),
        findingReasons([...signs, ...gait], 3),
      );
    },
    source: recalled('nice-ng127', 'progressive subacute loss of central neurological function'),
  },
  {
    // The halves of both fields are lost at the chiasm alone, and what lies there is mostly a mass.
    flag,
    check: (facts) =>
      facts.maybeProgressing && facts.exam.onset.pace !== 'hyperacute' && facts.query.result('mri-brain') === undefined
        ? findingReasons(facts.query.abnormal(['cranial-nerves/bitemporal-hemianopia']))
        : none,
    source: recalled('adams-victor', 'tumours about the chiasm'),
  },
  {
    // A changed person who begins to fit: the frontal and temporal lobes show no other sign.
    flag,
    check: (facts) => {
      if (facts.beganWithin(14) !== 'no' || facts.exam.course !== 'progressive' || !mayBeGrowing(facts)) return none;
      return facts.told('epilepsy').length > 0
        ? none
        : each(
            facts.told('seizure'),
            facts.told('behaviour-change', 'cognitive-change', 'new-headache', 'headache', 'vomiting'),
          );
    },
    source: recalled('nice-ng127'),
  },
  {
    // Known cancer and a sign of the brain or of a cranial nerve: it has spread to the brain or the base of the skull until shown otherwise.
    flag,
    check: (facts) => {
      const central = centralSigns(facts.query);
      // A nerve that was cut or pulled when the cancer was taken out, and of which nobody says that it grows worse; and lids that tire.
      const isOperated =
        facts.told('neck-or-chest-surgery', 'recent-surgery', 'dental-procedure').length > 0 &&
        facts.exam.course !== 'progressive';
      const isOther = isOperated || facts.kindProbability('junction') >= 0.5;
      const deafened = facts.told('cisplatin', 'carboplatin', 'aminoglycoside').length > 0;
      const nerves = facts.cranialNerveSigns.filter(({ item }) => !(deafened && item.key === 'hearing-loss'));
      const signs = [...central, ...(isOther ? [] : nerves)];
      return facts.maybeProgressing && mayBeGrowing(facts) ? each(malignancy(facts), findingReasons(signs, 3)) : none;
    },
    source: recalled('nice-ng127'),
  },
  {
    // Without defence a movement disorder of one side is an abscess or a lymphoma of the basal ganglia.
    flag,
    check: (facts) => {
      const defenceless = facts.told('hiv-infection', 'immunosuppression');
      const moves = facts.query
        .abnormal([
          'involuntary-movements/chorea',
          'involuntary-movements/dystonia',
          'involuntary-movements/hemiballism',
        ])
        .filter(({ side }) => side === 'left' || side === 'right');
      return facts.maybeProgressing && mayBeGrowing(facts)
        ? each(defenceless, findingReasons(onOneSide(moves), 2))
        : none;
    },
    source: recalled('adams-victor', 'toxoplasmosis in human immunodeficiency virus infection'),
  },
  {
    // Nerves that run together at the base of the skull fail one after the other.
    flag,
    check: (facts) => {
      if (!facts.maybeProgressing || !mayBeGrowing(facts)) return none;
      if (facts.query.abnormal(['inspection/vesicular-rash']).length > 0) return none;
      // An infection of the orbit or the cavernous sinus, and zoster there, have a flag of their own.
      const isInfected = facts.told('fever', 'herpes-zoster', 'sinus-or-ear-infection').length > 0;
      const places = isInfected ? basalPlaces.filter((place) => !orbital.has(place)) : basalPlaces;
      const share = facts.localisation.localisations
        .filter(({ site }) => places.includes(site))
        .reduce((sum, { probability }) => sum + probability, 0);
      const signs = facts.cranialNerveSigns;
      const kinds = new Set(signs.map(({ item }) => item.key));
      return share >= 0.4 && kinds.size >= 2 ? findingReasons(signs, 4) : none;
    },
    source: recalled('brazis', 'cavernous sinus, cerebellopontine angle, chiasm'),
  },
  {
    // Sight that is lost over weeks to months on both sides, or with an eye that does not move, is pressed upon.
    flag,
    check: (facts) => {
      const { query } = facts;
      if (facts.exam.course !== 'progressive' || facts.beganWithin(14) !== 'no' || !mayBeGrowing(facts)) return none;
      const sight = query.abnormal([
        'cranial-nerves/reduced-visual-acuity',
        'cranial-nerves/optic-disc-pallor',
        'cranial-nerves/relative-afferent-pupillary-defect',
      ]);
      const eyes = query.abnormal(eyeMovementSigns);
      const fields = query.abnormal(['cranial-nerves/bitemporal-hemianopia']);
      return fields.length > 0 || (sight.length > 0 && eyes.length > 0)
        ? findingReasons([...fields, ...sight, ...eyes], 4)
        : none;
    },
    source: recalled('adams-victor', 'tumours about the chiasm'),
  },
];

/** Masses of the brain, of the base of the skull and of the chiasm, as guidance and their own stories tell of them. */
export const massStories: readonly RaisingStory[] = ofMasses.map((story) => ({
  ...story,
  check: (facts) => (isOfBothHalves(facts) ? none : story.check(facts)),
}));

/** Not sudden, not of the last three days, not of more than two years, and no MRI has been made yet. What nobody has dated may be. */
function mayBeGrowing({ exam, query, beganWithin }: BedsideFacts): boolean {
  const { pace, durationDays } = exam.onset;
  if (pace === 'hyperacute' || query.result('mri-brain') !== undefined) return false;
  if (durationDays === undefined) return pace !== 'acute';
  return beganWithin(3) === 'no' && beganWithin(twoYears) === 'yes';
}

/** Poisons, medicines and wants that take the sight of both eyes. */
const harmOfSight = [
  'ethambutol',
  'linezolid',
  'isoniazid',
  'vigabatrin',
  'hydroxychloroquine',
  'chloroquine',
  'toxic-alcohol',
  'bariatric-surgery',
  'malnutrition',
  'vegan-diet',
  'vitamin-b12-deficiency',
];

/** Both eyes fail alike, no field is halved, and what harms optic nerves was taken or is wanting. */
function areEyesPoisoned({ query, told }: BedsideFacts): boolean {
  const halved = ['bitemporal-hemianopia', 'homonymous-hemianopia', 'upper-quadrantanopia', 'lower-quadrantanopia'];
  const sight = ['reduced-visual-acuity', 'reduced-colour-vision', 'central-scotoma', 'constricted-visual-field'];
  const item = (key: string) => `cranial-nerves/${key}`;
  const areBoth = (['left', 'right'] as const).every((side) => query.abnormal(sight.map(item), side).length > 0);
  return areBoth && query.abnormal(halved.map(item)).length === 0 && told(...harmOfSight).length > 0;
}

/** Changes of the mind that drink, its withdrawal and want of vitamins bring as often as a mass does. */
const ofAnyIllBrain: ReadonlySet<string> = new Set([
  'hallucinations',
  'agitation',
  'low-mood',
  'apathy',
  'inattention',
]);

const malignancy = (facts: BedsideFacts): readonly Reason[] => facts.told('cancer', 'lymphoma');

/** Places at the base of the skull where nerves lie together and masses grow. */
const basalPlaces: readonly string[] = [
  'cavernous-sinus',
  'orbital-apex',
  'cerebellopontine-angle',
  'jugular-foramen',
  'basal-meningeal-process',
  'optic-chiasm',
];

const orbital: ReadonlySet<string> = new Set(['cavernous-sinus', 'orbital-apex']);

const corticalSigns = [
  'higher-function/anomia',
  'higher-function/alexia',
  'higher-function/agraphia',
  'higher-function/apraxia',
  'higher-function/astereognosis',
  'higher-function/sensory-extinction',
  'special-tests/pronator-drift',
  'cranial-nerves/anosmia',
];
