import { read, recalled, type Source } from '../kernel/cite.ts';
import type { Ontology } from './ontology.ts';
import type { PlaceKey } from './places.ts';
import type { RootShares } from './segments.ts';

/** A muscle, or the part of a muscle that one branch supplies. The shares of its roots are judged and sum to 1. */
export interface Muscle {
  /** In the middle of a sentence. */
  readonly label: string;
  /** The most distal place whose damage cuts the branch; null = straight from the roots. */
  readonly via: PlaceKey | null;
  /** Segments of the motor neurons. Those of the accessory nerve leave the cord apart from the roots of the same name (see places). */
  readonly roots: RootShares;
  readonly uberon?: Ontology;
  readonly source: Source;
}

const mrcUpper = recalled('mrc-aids', 'upper limb, muscles by nerve and root');
const mrcLower = recalled('mrc-aids', 'lower limb, muscles by nerve and root');
const gray = recalled('grays-anatomy', 'muscles of the neck and trunk');
const ucsf = read('ucsf-root-table');
const lowerTable = read('lower-limb-root-table');
const isncsci = read('isncsci', 'key muscles');

const muscle = (
  label: string,
  via: PlaceKey | null,
  roots: RootShares,
  source: Source,
  uberon?: readonly [code: string, display: string],
): Muscle => ({ label, via, roots, source, ...(uberon && { uberon: { code: uberon[0], display: uberon[1] } }) });

// biome-ignore format: one muscle, one row
export const muscles = {
  // Neck
  'sternocleidomastoid': muscle('sternocleidomastoid', 'spinal-accessory-nerve-upper-neck', { C1: 0.2, C2: 0.5, C3: 0.3 }, gray, ['UBERON:0001128', 'sternocleidomastoid']),
  'deep-neck-flexors': muscle('longus colli and capitis', null, { C2: 0.25, C3: 0.25, C4: 0.2, C5: 0.15, C6: 0.15 }, gray),
  'scalenes': muscle('scalene muscles', null, { C3: 0.1, C4: 0.2, C5: 0.25, C6: 0.25, C7: 0.1, C8: 0.1 }, gray, ['UBERON:0008611', 'scalene muscle']),
  'deep-neck-extensors': muscle('splenius, semispinalis and the cervical paraspinal muscles', 'dorsal-rami', { C2: 0.1, C3: 0.2, C4: 0.25, C5: 0.2, C6: 0.1, C7: 0.1, C8: 0.05 }, gray),
  'trapezius': muscle('trapezius', 'spinal-accessory-nerve', { C2: 0.15, C3: 0.35, C4: 0.5 }, mrcUpper, ['UBERON:0002380', 'trapezius muscle']),
  'trapezius-cervical-branches': muscle('trapezius by its cervical branches', 'cervical-plexus', { C3: 0.5, C4: 0.5 }, gray),
  'levator-scapulae': muscle('levator scapulae', 'cervical-plexus', { C3: 0.45, C4: 0.55 }, gray, ['UBERON:0005461', 'levator scapulae muscle']),

  // Trunk
  'rectus-abdominis': muscle('rectus abdominis', 'intercostal-nerves', { T6: 0.05, T7: 0.15, T8: 0.15, T9: 0.15, T10: 0.2, T11: 0.15, T12: 0.15 }, gray, ['UBERON:0002382', 'rectus abdominis muscle']),
  'abdominal-obliques': muscle('oblique abdominal muscles', 'intercostal-nerves', { T7: 0.1, T8: 0.15, T9: 0.15, T10: 0.2, T11: 0.2, T12: 0.2 }, gray),
  'abdominal-obliques-lowest': muscle('lowest fibres of the oblique abdominal muscles', 'iliohypogastric-nerve', { L1: 1 }, gray),
  'erector-spinae': muscle('erector spinae', 'dorsal-rami', { T5: 0.05, T6: 0.05, T7: 0.05, T8: 0.05, T9: 0.05, T10: 0.1, T11: 0.1, T12: 0.1, L1: 0.12, L2: 0.11, L3: 0.11, L4: 0.11 }, gray, ['UBERON:0002462', 'erector spinae muscle group']),

  // Shoulder girdle
  'serratus-anterior': muscle('serratus anterior', 'long-thoracic-nerve', { C5: 0.3, C6: 0.4, C7: 0.3 }, mrcUpper, ['UBERON:0001125', 'serratus ventralis']),
  'rhomboids': muscle('rhomboids', 'dorsal-scapular-nerve', { C4: 0.2, C5: 0.8 }, mrcUpper, ['UBERON:0005621', 'rhomboid']),
  'supraspinatus': muscle('supraspinatus', 'suprascapular-nerve', { C5: 0.65, C6: 0.35 }, mrcUpper, ['UBERON:0002383', 'supraspinatus muscle']),
  'infraspinatus': muscle('infraspinatus', 'suprascapular-nerve-spinoglenoid', { C5: 0.65, C6: 0.35 }, mrcUpper, ['UBERON:0001477', 'infraspinatus muscle']),
  'teres-minor': muscle('teres minor', 'axillary-nerve', { C5: 0.65, C6: 0.35 }, mrcUpper, ['UBERON:0010496', 'teres minor muscle']),
  'deltoid': muscle('deltoid', 'axillary-nerve', { C5: 0.65, C6: 0.35 }, ucsf, ['UBERON:0001476', 'deltoid']),
  'subscapularis': muscle('subscapularis', 'subscapular-nerves', { C5: 0.35, C6: 0.5, C7: 0.15 }, mrcUpper, ['UBERON:0001129', 'subscapularis muscle']),
  'teres-major': muscle('teres major', 'subscapular-nerves', { C5: 0.2, C6: 0.5, C7: 0.3 }, mrcUpper, ['UBERON:0001478', 'teres major muscle']),
  'latissimus-dorsi': muscle('latissimus dorsi', 'thoracodorsal-nerve', { C6: 0.2, C7: 0.5, C8: 0.3 }, mrcUpper, ['UBERON:0001112', 'latissimus dorsi muscle']),
  'pectoralis-major-clavicular': muscle('clavicular head of pectoralis major', 'lateral-pectoral-nerve', { C5: 0.45, C6: 0.55 }, mrcUpper, ['UBERON:0002381', 'pectoralis major']),
  'pectoralis-major-sternocostal': muscle('sternocostal head of pectoralis major, upper part', 'lateral-pectoral-nerve', { C6: 0.3, C7: 0.7 }, mrcUpper, ['UBERON:0002381', 'pectoralis major']),
  'pectoralis-major-lowest': muscle('sternocostal head of pectoralis major, lower part', 'medial-pectoral-nerve', { C8: 0.6, T1: 0.4 }, mrcUpper, ['UBERON:0002381', 'pectoralis major']),

  // Upper arm and forearm
  'coracobrachialis': muscle('coracobrachialis', 'musculocutaneous-nerve', { C5: 0.2, C6: 0.4, C7: 0.4 }, mrcUpper, ['UBERON:0001505', 'coracobrachialis muscle']),
  'biceps': muscle('biceps', 'musculocutaneous-nerve', { C5: 0.55, C6: 0.45 }, isncsci, ['UBERON:0001507', 'biceps brachii']),
  'brachialis': muscle('brachialis', 'musculocutaneous-nerve', { C5: 0.55, C6: 0.45 }, isncsci, ['UBERON:0001506', 'brachialis muscle']),
  'brachioradialis': muscle('brachioradialis', 'radial-nerve-spiral-groove', { C5: 0.4, C6: 0.6 }, ucsf, ['UBERON:0011011', 'brachioradialis']),
  'triceps': muscle('triceps', 'radial-nerve-axilla', { C6: 0.12, C7: 0.68, C8: 0.2 }, isncsci, ['UBERON:0001509', 'triceps brachii']),
  'anconeus': muscle('anconeus', 'radial-nerve-spiral-groove', { C7: 0.7, C8: 0.3 }, mrcUpper),
  'supinator': muscle('supinator', 'radial-nerve-elbow', { C5: 0.1, C6: 0.65, C7: 0.25 }, mrcUpper, ['UBERON:0003228', 'supinator muscle']),
  'pronator-teres': muscle('pronator teres', 'median-nerve-elbow', { C6: 0.45, C7: 0.55 }, mrcUpper, ['UBERON:0001520', 'pronator teres']),
  'pronator-quadratus': muscle('pronator quadratus', 'anterior-interosseous-nerve', { C7: 0.35, C8: 0.55, T1: 0.1 }, mrcUpper),

  // Wrist
  'extensor-carpi-radialis-longus': muscle('extensor carpi radialis longus', 'radial-nerve-spiral-groove', { C5: 0.15, C6: 0.65, C7: 0.2 }, isncsci, ['UBERON:0001524', 'extensor carpi radialis longus muscle']),
  'extensor-carpi-radialis-brevis': muscle('extensor carpi radialis brevis', 'radial-nerve-elbow', { C5: 0.05, C6: 0.55, C7: 0.4 }, isncsci, ['UBERON:0001525', 'extensor carpi radialis brevis muscle']),
  'extensor-carpi-ulnaris': muscle('extensor carpi ulnaris', 'posterior-interosseous-nerve-recurrent-branch', { C7: 0.65, C8: 0.35 }, mrcUpper, ['UBERON:0001526', 'extensor carpi ulnaris muscle']),
  'flexor-carpi-radialis': muscle('flexor carpi radialis', 'median-nerve-beyond-pronator', { C6: 0.4, C7: 0.6 }, mrcUpper, ['UBERON:0001521', 'flexor carpi radialis muscle']),
  'palmaris-longus': muscle('palmaris longus', 'median-nerve-beyond-pronator', { C7: 0.4, C8: 0.5, T1: 0.1 }, mrcUpper, ['UBERON:0016493', 'palmaris longus muscle']),
  'flexor-carpi-ulnaris': muscle('flexor carpi ulnaris', 'ulnar-nerve-elbow', { C7: 0.2, C8: 0.6, T1: 0.2 }, mrcUpper, ['UBERON:0001522', 'flexor carpi ulnaris muscle']),

  // Long muscles of the fingers and thumb
  'extensor-digitorum': muscle('extensor digitorum', 'posterior-interosseous-nerve-recurrent-branch', { C7: 0.65, C8: 0.35 }, ucsf, ['UBERON:0007612', 'extensor digitorum communis']),
  'extensor-indicis': muscle('extensor indicis', 'posterior-interosseous-nerve-descending-branch', { C7: 0.4, C8: 0.6 }, mrcUpper),
  'extensor-digiti-minimi': muscle('extensor digiti minimi', 'posterior-interosseous-nerve-recurrent-branch', { C7: 0.6, C8: 0.4 }, mrcUpper, ['UBERON:0007614', 'extensor digiti minimi muscle']),
  'extensor-pollicis-longus': muscle('extensor pollicis longus', 'posterior-interosseous-nerve-descending-branch', { C7: 0.45, C8: 0.55 }, mrcUpper, ['UBERON:0003234', 'extensor pollicis longus muscle']),
  'extensor-pollicis-brevis': muscle('extensor pollicis brevis', 'posterior-interosseous-nerve-descending-branch', { C7: 0.45, C8: 0.55 }, mrcUpper, ['UBERON:0017618', 'extensor pollicis brevis muscle']),
  'abductor-pollicis-longus': muscle('abductor pollicis longus', 'posterior-interosseous-nerve-descending-branch', { C7: 0.6, C8: 0.4 }, mrcUpper, ['UBERON:0001527', 'abductor pollicis longus']),
  'flexor-digitorum-superficialis': muscle('flexor digitorum superficialis', 'median-nerve-beyond-pronator', { C7: 0.15, C8: 0.65, T1: 0.2 }, ucsf, ['UBERON:0003222', 'flexor digitorum superficialis']),
  'flexor-digitorum-profundus-median': muscle('flexor digitorum profundus to the index and middle fingers', 'anterior-interosseous-nerve', { C7: 0.15, C8: 0.7, T1: 0.15 }, isncsci, ['UBERON:0001523', 'flexor digitorum profundus']),
  'flexor-digitorum-profundus-ulnar': muscle('flexor digitorum profundus to the ring and little fingers', 'ulnar-nerve-elbow', { C7: 0.1, C8: 0.7, T1: 0.2 }, mrcUpper, ['UBERON:0001523', 'flexor digitorum profundus']),
  'flexor-pollicis-longus': muscle('flexor pollicis longus', 'anterior-interosseous-nerve', { C7: 0.2, C8: 0.7, T1: 0.1 }, mrcUpper, ['UBERON:0008446', 'flexor pollicis longus muscle']),

  // Hand
  'abductor-pollicis-brevis': muscle('abductor pollicis brevis', 'median-nerve-wrist', { C8: 0.4, T1: 0.6 }, mrcUpper, ['UBERON:0008465', 'abductor pollicis brevis muscle']),
  'opponens-pollicis': muscle('opponens pollicis', 'median-nerve-wrist', { C8: 0.4, T1: 0.6 }, mrcUpper),
  'flexor-pollicis-brevis-deep': muscle('deep head of flexor pollicis brevis', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.4, T1: 0.6 }, mrcUpper, ['UBERON:0011012', 'flexor pollicis brevis muscle']),
  'adductor-pollicis': muscle('adductor pollicis', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.45, T1: 0.55 }, mrcUpper, ['UBERON:0002962', 'adductor pollicis muscle']),
  'first-dorsal-interosseous': muscle('first dorsal interosseous', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.45, T1: 0.55 }, ucsf, ['UBERON:0001502', 'interosseous muscle of manus']),
  'dorsal-interossei': muscle('dorsal interossei', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.45, T1: 0.55 }, mrcUpper, ['UBERON:0001502', 'interosseous muscle of manus']),
  'palmar-interossei': muscle('palmar interossei', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.45, T1: 0.55 }, mrcUpper, ['UBERON:0001502', 'interosseous muscle of manus']),
  'abductor-digiti-minimi': muscle('abductor digiti minimi', 'deep-branch-of-ulnar-nerve', { C8: 0.45, T1: 0.55 }, isncsci, ['UBERON:0036173', 'abductor digiti minimi of hand']),
  'lumbricals-median': muscle('first and second lumbricals', 'median-nerve-wrist', { C8: 0.45, T1: 0.55 }, mrcUpper, ['UBERON:0001501', 'lumbrical muscle of manus']),
  'lumbricals-ulnar': muscle('third and fourth lumbricals', 'deep-branch-of-ulnar-nerve-beyond-hypothenar', { C8: 0.45, T1: 0.55 }, mrcUpper, ['UBERON:0001501', 'lumbrical muscle of manus']),

  // Hip
  'psoas': muscle('psoas major', 'branches-to-psoas', { L1: 0.25, L2: 0.45, L3: 0.3 }, isncsci, ['UBERON:0001298', 'psoas major muscle']),
  'iliacus': muscle('iliacus', 'femoral-nerve-pelvis', { L2: 0.55, L3: 0.45 }, isncsci, ['UBERON:0001369', 'iliacus muscle']),
  'sartorius': muscle('sartorius', 'femoral-nerve-groin', { L2: 0.6, L3: 0.4 }, mrcLower, ['UBERON:0001373', 'sartorius muscle']),
  'pectineus': muscle('pectineus', 'femoral-nerve-pelvis', { L2: 0.6, L3: 0.4 }, mrcLower),
  'adductor-longus': muscle('adductor longus, adductor brevis and gracilis', 'obturator-nerve', { L2: 0.35, L3: 0.45, L4: 0.2 }, lowerTable, ['UBERON:0000303', 'adductor longus']),
  'adductor-magnus': muscle('adductor magnus by the obturator nerve', 'obturator-nerve', { L2: 0.25, L3: 0.45, L4: 0.3 }, lowerTable, ['UBERON:0000370', 'adductor magnus']),
  'adductor-magnus-sciatic': muscle('adductor magnus by the sciatic nerve', 'sciatic-nerve-tibial-division', { L4: 0.7, L5: 0.3 }, mrcLower, ['UBERON:0000370', 'adductor magnus']),
  'obturator-externus': muscle('obturator externus', 'obturator-nerve', { L3: 0.5, L4: 0.5 }, mrcLower),
  'gluteus-medius': muscle('gluteus medius', 'superior-gluteal-nerve', { L4: 0.2, L5: 0.65, S1: 0.15 }, lowerTable, ['UBERON:0001371', 'gluteus medius']),
  'gluteus-minimus': muscle('gluteus minimus', 'superior-gluteal-nerve', { L4: 0.2, L5: 0.65, S1: 0.15 }, lowerTable, ['UBERON:0008521', 'gluteus minimus']),
  'tensor-fasciae-latae': muscle('tensor fasciae latae', 'superior-gluteal-nerve', { L4: 0.25, L5: 0.6, S1: 0.15 }, lowerTable, ['UBERON:0001376', 'tensor fasciae latae muscle']),
  'gluteus-maximus': muscle('gluteus maximus', 'inferior-gluteal-nerve', { L5: 0.3, S1: 0.5, S2: 0.2 }, lowerTable, ['UBERON:0001370', 'gluteus maximus']),
  'deep-hip-rotators': muscle('short lateral rotators of the hip', 'sacral-plexus', { L5: 0.4, S1: 0.5, S2: 0.1 }, recalled('grays-anatomy', 'gluteal region')),

  // Thigh
  'quadriceps': muscle('quadriceps', 'femoral-nerve-groin', { L2: 0.15, L3: 0.45, L4: 0.4 }, isncsci, ['UBERON:0001377', 'quadriceps femoris']),
  'rectus-femoris': muscle('rectus femoris', 'femoral-nerve-groin', { L2: 0.3, L3: 0.4, L4: 0.3 }, mrcLower, ['UBERON:0001378', 'rectus femoris']),
  'medial-hamstrings': muscle('semitendinosus and semimembranosus', 'sciatic-nerve-tibial-division', { L5: 0.5, S1: 0.4, S2: 0.1 }, lowerTable, ['UBERON:0001375', 'semitendinosus']),
  'biceps-femoris-long': muscle('long head of biceps femoris', 'sciatic-nerve-tibial-division', { L5: 0.25, S1: 0.6, S2: 0.15 }, lowerTable, ['UBERON:0001374', 'biceps femoris']),
  'biceps-femoris-short': muscle('short head of biceps femoris', 'sciatic-nerve-fibular-division', { L5: 0.4, S1: 0.5, S2: 0.1 }, lowerTable, ['UBERON:0001374', 'biceps femoris']),

  // Leg below the knee
  'tibialis-anterior': muscle('tibialis anterior', 'deep-fibular-nerve', { L4: 0.45, L5: 0.55 }, isncsci, ['UBERON:0001385', 'tibialis anterior']),
  'extensor-hallucis-longus': muscle('extensor hallucis longus', 'deep-fibular-nerve', { L5: 0.8, S1: 0.2 }, isncsci),
  'extensor-digitorum-longus': muscle('extensor digitorum longus', 'deep-fibular-nerve', { L5: 0.75, S1: 0.25 }, mrcLower, ['UBERON:0001386', 'extensor digitorum longus']),
  'fibularis-tertius': muscle('fibularis tertius', 'deep-fibular-nerve', { L5: 0.7, S1: 0.3 }, mrcLower, ['UBERON:0010524', 'fibularis tertius']),
  'fibularis-longus': muscle('fibularis longus', 'superficial-fibular-nerve', { L5: 0.6, S1: 0.4 }, mrcLower, ['UBERON:0001387', 'fibularis longus']),
  'fibularis-brevis': muscle('fibularis brevis', 'superficial-fibular-nerve', { L5: 0.6, S1: 0.4 }, mrcLower, ['UBERON:0010526', 'fibularis brevis']),
  'gastrocnemius': muscle('gastrocnemius', 'tibial-nerve-popliteal-fossa', { S1: 0.75, S2: 0.25 }, isncsci, ['UBERON:0001388', 'gastrocnemius']),
  'soleus': muscle('soleus', 'tibial-nerve-popliteal-fossa', { S1: 0.7, S2: 0.3 }, isncsci, ['UBERON:0001389', 'soleus muscle']),
  'tibialis-posterior': muscle('tibialis posterior', 'tibial-nerve-calf', { L4: 0.4, L5: 0.6 }, read('jeon-2013'), ['UBERON:0001667', 'tibialis posterior']),
  'flexor-digitorum-longus': muscle('flexor digitorum longus', 'tibial-nerve-calf', { L5: 0.3, S1: 0.5, S2: 0.2 }, mrcLower, ['UBERON:0001666', 'flexor digitorum longus']),
  'flexor-hallucis-longus': muscle('flexor hallucis longus', 'tibial-nerve-calf', { L5: 0.25, S1: 0.5, S2: 0.25 }, mrcLower, ['UBERON:0001392', 'flexor hallucis longus']),

  // Foot
  'extensor-digitorum-brevis': muscle('extensor digitorum brevis', 'deep-fibular-nerve-ankle', { L5: 0.55, S1: 0.45 }, mrcLower, ['UBERON:0000372', 'extensor digitorum brevis']),
  'flexor-hallucis-brevis': muscle('flexor hallucis brevis', 'medial-plantar-nerve', { S1: 0.55, S2: 0.45 }, mrcLower, ['UBERON:0011022', 'flexor hallucis brevis muscle']),
  'flexor-digitorum-brevis': muscle('flexor digitorum brevis', 'medial-plantar-nerve', { S1: 0.55, S2: 0.45 }, mrcLower, ['UBERON:0014380', 'flexor digitorum brevis muscle']),
  'abductor-hallucis': muscle('abductor hallucis', 'medial-plantar-nerve', { S1: 0.45, S2: 0.45, S3: 0.1 }, mrcLower, ['UBERON:0008464', 'abductor hallucis muscle']),
  'pedal-interossei': muscle('interossei of the foot', 'lateral-plantar-nerve', { S1: 0.35, S2: 0.5, S3: 0.15 }, mrcLower, ['UBERON:0006497', 'interosseous muscle of pes']),
  'abductor-digiti-minimi-pedis': muscle('abductor digiti minimi of the foot', 'lateral-plantar-nerve', { S1: 0.35, S2: 0.5, S3: 0.15 }, mrcLower),
  'quadratus-plantae': muscle('quadratus plantae and the lateral lumbricals', 'lateral-plantar-nerve', { S1: 0.4, S2: 0.5, S3: 0.1 }, mrcLower),
} as const satisfies Record<string, Muscle>;

export type MuscleKey = keyof typeof muscles;
