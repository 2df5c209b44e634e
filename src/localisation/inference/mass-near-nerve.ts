import type { BodyPartKey } from '../../anatomy/body-parts.ts';
import type { Exam } from '../../exam/exam.ts';
import { type BodySide, bodySides } from '../../kernel/side.ts';
import { shiftBy } from './limb-patterns.ts';
import type { Applies, Shift } from './shift.ts';

/** Nerves that run, or are tethered, where a mass can be felt. Source: Stewart, Focal Peripheral Neuropathies (recalled). */
const nervesNear: Readonly<Partial<Record<BodyPartKey, readonly string[]>>> = {
  face: ['facial-nerve', 'mandibular-nerve', 'maxillary-nerve'],
  neck: [
    'spinal-accessory-nerve',
    'cervical-plexus',
    'brachial-plexus',
    'upper-trunk',
    'middle-trunk',
    'lower-trunk',
    'phrenic-nerve',
    'vagus-nerve',
    'recurrent-laryngeal-nerve',
    'hypoglossal-nerve',
    'oculosympathetic-chain',
  ],
  'scapular-region': ['suprascapular-nerve', 'suprascapular-nerve-spinoglenoid', 'axillary-nerve'],
  shoulder: ['axillary-nerve', 'suprascapular-nerve', 'suprascapular-nerve-spinoglenoid', 'spinal-accessory-nerve'],
  axilla: [
    'brachial-plexus',
    'lateral-cord',
    'posterior-cord',
    'medial-cord',
    'axillary-nerve',
    'musculocutaneous-nerve',
    'radial-nerve-axilla',
    'median-nerve-upper-arm',
    'ulnar-nerve-upper-arm',
    'intercostobrachial-nerve',
    'long-thoracic-nerve',
  ],
  'upper-arm': [
    'radial-nerve-spiral-groove',
    'musculocutaneous-nerve',
    'median-nerve-upper-arm',
    'ulnar-nerve-upper-arm',
  ],
  elbow: [
    'ulnar-nerve-elbow',
    'radial-nerve-elbow',
    'posterior-interosseous-nerve',
    'median-nerve-elbow',
    'anterior-interosseous-nerve',
  ],
  forearm: [
    'posterior-interosseous-nerve',
    'anterior-interosseous-nerve',
    'median-nerve-forearm',
    'ulnar-nerve-forearm',
    'superficial-radial-nerve',
  ],
  wrist: [
    'median-nerve-wrist',
    'ulnar-nerve-wrist',
    'superficial-radial-nerve',
    'dorsal-branch-of-ulnar-nerve',
    'palmar-branch-of-median-nerve',
  ],
  hand: [
    'median-nerve-wrist',
    'ulnar-nerve-wrist',
    'superficial-branch-of-ulnar-nerve',
    'deep-branch-of-ulnar-nerve',
    'palmar-branch-of-ulnar-nerve',
  ],
  groin: [
    'femoral-nerve-groin',
    'femoral-nerve-pelvis',
    'obturator-nerve',
    'ilioinguinal-nerve',
    'genitofemoral-nerve',
    'lateral-femoral-cutaneous-nerve',
  ],
  hip: ['lateral-femoral-cutaneous-nerve', 'femoral-nerve-groin'],
  buttock: [
    'sciatic-nerve',
    'sacral-plexus',
    'superior-gluteal-nerve',
    'inferior-gluteal-nerve',
    'posterior-femoral-cutaneous-nerve',
    'pudendal-nerve',
  ],
  thigh: ['sciatic-nerve', 'sciatic-nerve-fibular-division', 'sciatic-nerve-tibial-division', 'saphenous-nerve'],
  knee: ['common-fibular-nerve', 'tibial-nerve-popliteal-fossa', 'saphenous-nerve', 'sural-nerve'],
  'leg-below-knee': [
    'common-fibular-nerve',
    'deep-fibular-nerve',
    'superficial-fibular-nerve',
    'tibial-nerve-calf',
    'sural-nerve',
  ],
  ankle: [
    'tibial-nerve-tarsal-tunnel',
    'deep-fibular-nerve-ankle',
    'superficial-fibular-nerve-ankle',
    'sural-nerve',
    'medial-calcaneal-nerve',
  ],
  foot: ['medial-plantar-nerve', 'lateral-plantar-nerve', 'tibial-nerve-tarsal-tunnel'],
};

/** Odds of a nerve that runs where a mass is felt on the same side. Judged. */
const nerveBesideMass = 6;

const nearMass: ReadonlyMap<string, Applies> = new Map(
  Object.entries(nervesNear).flatMap(([part, nerves]) =>
    bodySides.map((side: BodySide): [string, Applies] => [
      `${part} ${side}`,
      (site) => site.side === side && nerves.includes(site.key),
    ]),
  ),
);

/** A mass that is felt speaks for the nerves that it can press on. */
export function massShifts({ findings }: Exam): readonly Shift[] {
  return findings.flatMap((finding) => {
    if (!finding.abnormal || finding.item.key !== 'palpable-mass') return [];
    const applies = nearMass.get(`${finding.place?.key} ${finding.side}`);
    if (applies === undefined) return [];
    return [shiftBy(finding, { applies, factor: nerveBesideMass, because: 'the nerve runs where the mass is felt' })];
  });
}
