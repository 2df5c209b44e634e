import { recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, narrower } from './code-links.ts';
import { anyFaculty, cerebellar, faculty, proprioception, recordedOnly } from './probes.ts';
import { sectionTable } from './section-table.ts';

const anySite = ['head', 'face', 'tongue', 'neck', 'trunk', 'upper-limb', 'hand', 'lower-limb', 'foot'] as const;
const limbSites = ['upper-limb', 'hand', 'lower-limb', 'foot'] as const;
const muscleSites = ['face', 'shoulder', 'upper-arm', 'forearm', 'hand', 'thigh', 'calf', 'foot'] as const;

/** Movements that the person does not will, and phenomena of relaxation. Fasciculation is seen on inspection. */
export const involuntaryMovements = sectionTable(
  'involuntaryMovements',
  { scale: 'presence', sides: 'optional', region: 'trunk', source: recalled('dejong', 'abnormalities of movement') },
  {
    'resting-tremor': {
      label: 'Resting tremor',
      sites: anySite,
      hpo: equivalent('HP:0002322', 'Resting tremor'),
      probe: faculty('rest-tremor'),
    },
    'postural-tremor': {
      label: 'Postural tremor',
      sites: anySite,
      hpo: equivalent('HP:0002174', 'Postural tremor'),
      probe: faculty('postural-tremor'),
    },
    'action-tremor': {
      label: 'Action tremor',
      sites: anySite,
      hpo: equivalent('HP:0002345', 'Action tremor'),
      probe: faculty('postural-tremor'),
    },
    'intention-tremor': {
      label: 'Intention tremor',
      sides: 'paired',
      sites: limbSites,
      hpo: equivalent('HP:0002080', 'Intention tremor'),
      probe: cerebellar('upper-limb'),
    },
    'palatal-tremor': {
      label: 'Palatal tremor',
      sides: 'midline',
      region: 'head',
      hpo: equivalent('HP:0010530', 'Palatal tremor'),
      probe: recordedOnly,
    },
    chorea: {
      label: 'Chorea',
      sites: anySite,
      hpo: equivalent('HP:0002072', 'Chorea'),
      probe: faculty('chorea'),
    },
    athetosis: {
      label: 'Athetosis',
      sites: anySite,
      hpo: equivalent('HP:0002305', 'Athetosis'),
      probe: anyFaculty('chorea', 'dystonia'),
    },
    hemiballism: {
      label: 'Hemiballism',
      sides: 'paired',
      bodyPart: 'upper-limb',
      hpo: equivalent('HP:0100248', 'Hemiballismus'),
      probe: faculty('ballism'),
    },
    dystonia: {
      label: 'Dystonia',
      sites: anySite,
      hpo: equivalent('HP:0001332', 'Dystonia'),
      probe: faculty('dystonia'),
    },
    blepharospasm: {
      label: 'Blepharospasm',
      region: 'head',
      hpo: equivalent('HP:0000643', 'Blepharospasm'),
      probe: anyFaculty('dystonia', 'lid-spasm'),
    },
    'orofacial-dyskinesia': {
      label: 'Orofacial dyskinesia',
      sides: 'midline',
      region: 'head',
      hpo: equivalent('HP:0002310', 'Orofacial dyskinesia'),
      probe: anyFaculty('chorea', 'dystonia'),
    },
    tics: { label: 'Motor tics', sites: anySite, hpo: equivalent('HP:0100034', 'Motor tics'), probe: faculty('tics') },
    myoclonus: {
      label: 'Myoclonus',
      sites: anySite,
      hpo: equivalent('HP:0001336', 'Myoclonus'),
      probe: faculty('myoclonus'),
    },
    polyminimyoclonus: {
      label: 'Polyminimyoclonus of the fingers',
      sites: ['hand'],
      region: 'upper-limbs',
      hpo: equivalent('HP:0031986', 'Polyminimyoclonus'),
      probe: { kind: 'denervation', feature: 'fasciculation' },
    },
    asterixis: {
      label: 'Asterixis',
      sites: ['upper-limb', 'hand'],
      region: 'upper-limbs',
      hpo: equivalent('HP:0012164', 'Asterixis'),
      probe: faculty('asterixis'),
    },
    pseudoathetosis: {
      label: 'Pseudoathetosis of the outstretched fingers',
      sides: 'paired',
      region: 'upper-limbs',
      bodyPart: 'hand',
      probe: proprioception('upper'),
    },
    'hemifacial-spasm': {
      label: 'Hemifacial spasm',
      sides: 'paired',
      region: 'head',
      bodyPart: 'face',
      hpo: equivalent('HP:0010828', 'Hemifacial spasm'),
      probe: recordedOnly,
    },
    myokymia: {
      label: 'Myokymia',
      sites: muscleSites,
      hpo: equivalent('HP:0002411', 'Myokymia'),
      probe: recordedOnly,
    },
    neuromyotonia: {
      label: 'Continuous muscle activity with delayed relaxation (neuromyotonia)',
      sites: muscleSites,
      hpo: equivalent('HP:0034351', 'Neuromyotonia'),
      probe: recordedOnly,
    },
    'grip-myotonia': {
      label: 'Grip myotonia',
      sides: 'paired',
      region: 'upper-limbs',
      bodyPart: 'hand',
      hpo: equivalent('HP:0012899', 'Handgrip myotonia'),
      probe: faculty('myotonia'),
    },
    'percussion-myotonia': {
      label: 'Percussion myotonia',
      sites: ['tongue', 'thenar-eminence', 'forearm', 'calf'],
      hpo: equivalent('HP:0010548', 'Percussion myotonia'),
      probe: faculty('myotonia'),
    },
    'muscle-rippling': {
      label: 'Rippling of muscle on percussion',
      sites: muscleSites,
      hpo: equivalent('HP:0003760', 'Percussion-induced rapid rolling muscle contractions'),
      probe: recordedOnly,
    },
    cramp: {
      label: 'Cramp seen',
      sites: muscleSites,
      hpo: inexact('HP:0003394', 'Muscle spasm'),
      probe: recordedOnly,
    },
    'flexor-spasms': {
      label: 'Flexor spasms of the leg',
      sides: 'paired',
      region: 'lower-limbs',
      bodyPart: 'lower-limb',
      probe: { kind: 'upper-motor', limb: 'lower' },
    },
    'risus-sardonicus': {
      label: 'Risus sardonicus',
      sides: 'midline',
      region: 'head',
      probe: recordedOnly,
      source: recalled('adams-victor', 'tetanus'),
    },
    retrocollis: {
      label: 'Retrocollis',
      sides: 'midline',
      region: 'neck',
      hpo: equivalent('HP:0002544', 'Retrocollis'),
      probe: faculty('dystonia'),
    },
    'oculogyric-crisis': {
      label: 'Oculogyric crisis',
      sides: 'midline',
      region: 'head',
      probe: faculty('dystonia'),
    },
    micrographia: {
      label: 'Micrographia',
      region: 'upper-limbs',
      hpo: equivalent('HP:0031908', 'Micrographia'),
      probe: faculty('bradykinesia'),
    },
    bradykinesia: {
      label: 'Bradykinesia with decrement',
      sites: limbSites,
      hpo: equivalent('HP:0002067', 'Bradykinesia'),
      probe: faculty('bradykinesia'),
    },
    akathisia: {
      label: 'Akathisia',
      sides: 'midline',
      hpo: equivalent('HP:0031943', 'Akathisia'),
      probe: recordedOnly,
    },
    'alien-limb': {
      label: 'Alien limb',
      sides: 'paired',
      bodyPart: 'upper-limb',
      hpo: equivalent('HP:0032506', 'Alien limb phenomenon'),
      probe: faculty('limb-ownership'),
    },
    'mirror-movements': {
      label: 'Mirror movements of the hands',
      sides: 'optional',
      region: 'upper-limbs',
      hpo: equivalent('HP:0001335', 'Bimanual synkinesia'),
      probe: recordedOnly,
    },
    'exaggerated-startle': {
      label: 'Exaggerated startle',
      sides: 'midline',
      hpo: equivalent('HP:0002267', 'Exaggerated startle response'),
      probe: recordedOnly,
    },
    'seizure-seen': {
      label: 'Seizure seen on examination',
      probe: recordedOnly,
    },
    'carpopedal-spasm': {
      label: 'Carpopedal spasm or tetany',
      hpo: equivalent('HP:0001281', 'Tetany'),
      probe: recordedOnly,
    },
    opisthotonus: {
      label: 'Opisthotonus',
      sides: 'midline',
      hpo: equivalent('HP:0002179', 'Opisthotonus'),
      probe: recordedOnly,
    },
    'generalised-spasms': {
      label: 'Generalised reflex spasms',
      sides: 'midline',
      probe: recordedOnly,
    },
    posturing: {
      label: 'Decorticate or decerebrate posturing',
      hpo: narrower('HP:0025013', 'Decerebrate rigidity'),
      probe: faculty('consciousness'),
    },
    'distractible-tremor': {
      label: 'Tremor that stops or entrains on distraction',
      sites: limbSites,
      probe: faculty('effort'),
    },
  },
);
