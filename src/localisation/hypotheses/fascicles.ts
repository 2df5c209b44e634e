import type { PlaceKey } from '../../anatomy/places.ts';
import { recalled, type Source } from '../../kernel/cite.ts';

/**
 * A lesion that takes some fascicles of a nerve or plexus part more than others, because they lie apart inside it, or one
 * that takes the neighbours that lie beside it at its usual place.
 */
export interface Fascicular {
  /** Where the lesion is. */
  readonly site: PlaceKey;
  /** Tells it from the other extents of the site. */
  readonly key: string;
  /** How many of the lesions at this site are of this kind, 0 to 1. Judged. */
  readonly share: number;
  /** What is lost: place, fraction of motor and of sensory fibres. The places stand for the fascicles that lead there. */
  readonly hits: readonly (readonly [PlaceKey, number, number])[];
  readonly source: Source;
}

const book = (where: string): Source => recalled('preston-shapiro', where);

// biome-ignore format: one lesion, one row
export const fascicles: readonly Fascicular[] = [
  // The fibular division lies outermost against the bone and has little fat between its fascicles.
  { site: 'sciatic-nerve', key: 'both-divisions-severe', share: 0.12, hits: [['sciatic-nerve-fibular-division', 0.95, 0.9], ['sciatic-nerve-tibial-division', 0.8, 0.75]], source: book('sciatic neuropathy') },
  { site: 'sciatic-nerve', key: 'fibular-severe', share: 0.2, hits: [['sciatic-nerve-fibular-division', 0.92, 0.85], ['sciatic-nerve-tibial-division', 0.35, 0.35]], source: book('sciatic neuropathy') },
  { site: 'sciatic-nerve', key: 'fibular-severe-tibial-slight', share: 0.13, hits: [['sciatic-nerve-fibular-division', 0.9, 0.8], ['sciatic-nerve-tibial-division', 0.12, 0.12]], source: book('sciatic neuropathy') },
  { site: 'sciatic-nerve', key: 'fibular-partial', share: 0.17, hits: [['sciatic-nerve-fibular-division', 0.55, 0.55], ['sciatic-nerve-tibial-division', 0.12, 0.12]], source: book('sciatic neuropathy') },
  // In the thigh the branches to the hamstrings have left, while the divisions still lie in one sheath.
  { site: 'sciatic-nerve', key: 'in-the-thigh-severe', share: 0.07, hits: [['common-fibular-nerve', 0.95, 0.85], ['tibial-nerve-popliteal-fossa', 0.9, 0.8]], source: book('sciatic neuropathy') },
  { site: 'sciatic-nerve', key: 'in-the-thigh-partial', share: 0.05, hits: [['common-fibular-nerve', 0.7, 0.6], ['tibial-nerve-popliteal-fossa', 0.45, 0.45]], source: book('sciatic neuropathy') },
  // At the fibular neck the fascicles of the deep branch lie against the bone.
  { site: 'common-fibular-nerve', key: 'deep-worse-severe', share: 0.18, hits: [['deep-fibular-nerve', 0.94, 0.85], ['superficial-fibular-nerve', 0.5, 0.65]], source: book('fibular neuropathy') },
  { site: 'common-fibular-nerve', key: 'deep-worse-partial', share: 0.15, hits: [['deep-fibular-nerve', 0.6, 0.5], ['superficial-fibular-nerve', 0.15, 0.3]], source: book('fibular neuropathy') },
  // The fascicles bound for the hand lie under the skin behind the elbow, those for the forearm flexors deep.
  { site: 'ulnar-nerve-elbow', key: 'hand-fibres-severe', share: 0.07, hits: [['ulnar-nerve-elbow', 0.1, 0.05], ['ulnar-nerve-forearm', 0.9, 0.85]], source: book('ulnar neuropathy') },
  { site: 'ulnar-nerve-elbow', key: 'hand-fibres-partial', share: 0.13, hits: [['ulnar-nerve-elbow', 0.05, 0.05], ['ulnar-nerve-forearm', 0.5, 0.7]], source: book('ulnar neuropathy') },
  { site: 'median-nerve-elbow', key: 'beyond-pronator-severe', share: 0.2, hits: [['median-nerve-beyond-pronator', 0.9, 0.85]], source: book('median neuropathy at the elbow') },
  { site: 'median-nerve-elbow', key: 'beyond-pronator-partial', share: 0.3, hits: [['median-nerve-beyond-pronator', 0.5, 0.55]], source: book('median neuropathy at the elbow') },
  // Each of the two branches may be pressed on more than the other, so that the fingers drop one after another.
  { site: 'posterior-interosseous-nerve', key: 'recurrent-branch-worse', share: 0.12, hits: [['posterior-interosseous-nerve-recurrent-branch', 0.92, 0], ['posterior-interosseous-nerve-descending-branch', 0.4, 0]], source: book('posterior interosseous neuropathy') },
  { site: 'posterior-interosseous-nerve', key: 'descending-branch-worse', share: 0.12, hits: [['posterior-interosseous-nerve-descending-branch', 0.92, 0], ['posterior-interosseous-nerve-recurrent-branch', 0.3, 0]], source: book('posterior interosseous neuropathy') },
  // Blood or a retractor in the psoas takes its own branches with the nerve.
  { site: 'femoral-nerve-pelvis', key: 'with-psoas', share: 0.15, hits: [['femoral-nerve-pelvis', 0.92, 0.85], ['branches-to-psoas', 0.75, 0]], source: book('femoral neuropathy') },
  // A band or rib under the trunk presses on its T1 fibres first, so the thumb suffers before the little finger.
  { site: 'lower-trunk', key: 't1-worse-severe', share: 0.25, hits: [['lower-trunk-t1', 0.92, 0.85], ['lower-trunk-c8', 0.3, 0.4]], source: book('neurogenic thoracic outlet syndrome') },
  { site: 'lower-trunk', key: 't1-worse-partial', share: 0.25, hits: [['lower-trunk-t1', 0.6, 0.6], ['lower-trunk-c8', 0.12, 0.25]], source: book('neurogenic thoracic outlet syndrome') },
  { site: 'deep-branch-of-ulnar-nerve', key: 'beyond-hypothenar-severe', share: 0.2, hits: [['deep-branch-of-ulnar-nerve-beyond-hypothenar', 0.95, 0]], source: book('ulnar neuropathy at the wrist') },
  { site: 'deep-branch-of-ulnar-nerve', key: 'beyond-hypothenar-moderate', share: 0.2, hits: [['deep-branch-of-ulnar-nerve-beyond-hypothenar', 0.75, 0]], source: book('ulnar neuropathy at the wrist') },
  { site: 'deep-branch-of-ulnar-nerve', key: 'beyond-hypothenar-partial', share: 0.2, hits: [['deep-branch-of-ulnar-nerve-beyond-hypothenar', 0.5, 0]], source: book('ulnar neuropathy at the wrist') },
  { site: 'spinal-accessory-nerve', key: 'above-sternocleidomastoid', share: 0.15, hits: [['spinal-accessory-nerve-upper-neck', 0.85, 0]], source: recalled('brazis', 'accessory nerve') },
  // In many feet the branch to the heel leaves inside the tunnel.
  { site: 'tibial-nerve-tarsal-tunnel', key: 'with-heel', share: 0.35, hits: [['tibial-nerve-tarsal-tunnel', 0.5, 0.65], ['medial-calcaneal-nerve', 0, 0.6]], source: book('tarsal tunnel syndrome') },
  // Behind the sternocleidomastoid the cutaneous nerves of the neck come up beside the accessory nerve.
  { site: 'spinal-accessory-nerve', key: 'with-skin-of-neck', share: 0.2, hits: [['spinal-accessory-nerve', 0.9, 0], ['great-auricular-nerve', 0, 0.7], ['transverse-cervical-nerve', 0, 0.4], ['supraclavicular-nerves', 0, 0.2]], source: recalled('grays-anatomy', 'posterior triangle of the neck') },
  // Below the piriformis the three leave the pelvis together.
  { site: 'sciatic-nerve', key: 'with-gluteal-neighbours', share: 0.08, hits: [['sciatic-nerve', 0.7, 0.65], ['inferior-gluteal-nerve', 0.6, 0], ['posterior-femoral-cutaneous-nerve', 0, 0.6]], source: recalled('grays-anatomy', 'gluteal region') },
  // Swollen muscles of the buttock press on all that comes out on either side of the piriformis.
  { site: 'sciatic-nerve', key: 'in-a-swollen-buttock', share: 0.04, hits: [['sciatic-nerve', 0.93, 0.85], ['superior-gluteal-nerve', 0.8, 0], ['inferior-gluteal-nerve', 0.8, 0], ['posterior-femoral-cutaneous-nerve', 0, 0.5]], source: recalled('grays-anatomy', 'gluteal region') },
  { site: 'ilioinguinal-nerve', key: 'with-iliohypogastric', share: 0.25, hits: [['ilioinguinal-nerve', 0.5, 0.8], ['iliohypogastric-nerve', 0.4, 0.7]], source: recalled('grays-anatomy', 'lumbar plexus') },
];

/** How many of the lesions at a place are fascicular, 0 to 1. */
export function fascicularShare(place: PlaceKey): number {
  return fascicles.reduce((sum, { site, share }) => (site === place ? sum + share : sum), 0);
}
