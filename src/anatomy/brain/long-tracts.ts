import { recalled, type Source } from '../../kernel/cite.ts';
import { segmentIndex } from '../segments.ts';
import { other, type Path, partly, same, series } from './path.ts';
import type { StructureKey } from './structures.ts';

/** Parts of the body as motor and sensory cortex lay them out. */
export const bodyAreas = ['face', 'arm', 'hand', 'leg', 'foot'] as const;
export type BodyArea = (typeof bodyAreas)[number];

/** Which area of the cortex serves a segment: the trunk goes with the hand above T6 and with the leg below. */
export function areaOf(segment: number): Exclude<BodyArea, 'face'> {
  if (segment <= segmentIndex('C6')) return 'arm';
  if (segment <= segmentIndex('T5')) return 'hand';
  return segment <= segmentIndex('L3') ? 'leg' : 'foot';
}

export interface LongTract {
  /** Descending command, by area of the body. The tract crosses in the lower medulla; to the facial nucleus, in the pons. */
  readonly motor: Readonly<Record<BodyArea, Path>>;
  /** Vibration, joint position and half of touch. */
  readonly position: Readonly<Record<BodyArea, Path>>;
  readonly pain: Readonly<Record<BodyArea, Path>>;
  readonly source: Source;
}

const motorCortex: Readonly<Record<BodyArea, StructureKey>> = {
  face: 'motor-cortex-face',
  arm: 'motor-cortex-arm',
  hand: 'motor-cortex-hand',
  leg: 'motor-cortex-leg',
  foot: 'motor-cortex-foot',
};

const sensoryCortex: Readonly<Record<BodyArea, StructureKey>> = {
  face: 'sensory-cortex-face',
  arm: 'sensory-cortex-arm',
  hand: 'sensory-cortex-hand',
  leg: 'sensory-cortex-leg',
  foot: 'sensory-cortex-foot',
};

const limbMotor = (area: BodyArea): Path =>
  series(
    other(
      motorCortex[area],
      'corona-radiata',
      'internal-capsule-posterior-limb',
      'cerebral-peduncle',
      'basis-pontis',
      'pyramid',
    ),
    same('crossed-corticospinal-fibres'),
  );

/** Above the thalamus pain is felt even without the cortex; vibration less so, position hardly. */
const corticalShare = { position: 0.6, pain: 0.4 } as const;

const limbPosition = (area: BodyArea): Path =>
  series(
    same('dorsal-column-nuclei'),
    other(
      'medial-lemniscus-in-medulla',
      'medial-lemniscus-in-pons',
      'medial-lemniscus-in-midbrain',
      'ventral-posterolateral-nucleus',
      'thalamocortical-radiation',
    ),
    partly(corticalShare.position, other(sensoryCortex[area])),
  );

const limbPain = (area: BodyArea): Path =>
  series(
    other(
      'spinothalamic-tract-in-medulla',
      'spinothalamic-tract-in-pons',
      'spinothalamic-tract-in-midbrain',
      'ventral-posterolateral-nucleus',
      'thalamocortical-radiation',
    ),
    partly(corticalShare.pain, other(sensoryCortex[area])),
  );

const corticobulbarFibres = [
  'motor-cortex-face',
  'corona-radiata',
  'internal-capsule-genu',
  'corticobulbar-fibres-in-midbrain',
  'corticobulbar-fibres-in-pons',
] as const;

/** The corticobulbar fibres from one hemisphere as far as the facial nucleus; those to the nuclei below run on with them. */
export const corticobulbar = other(...corticobulbarFibres);

/** The same fibres from the hemisphere of the side on which the sign shows. */
export const uncrossedCorticobulbar = same(...corticobulbarFibres);

const faceBeyondNucleus = other(
  'trigeminothalamic-fibres',
  'ventral-posteromedial-nucleus',
  'thalamocortical-radiation',
);

const facePosition = series(
  same('trigeminal-root', 'trigeminal-main-sensory-nucleus'),
  faceBeyondNucleus,
  partly(corticalShare.position, other('sensory-cortex-face')),
);

const facePain = series(
  same('trigeminal-root', 'spinal-trigeminal-tract-in-pons', 'spinal-trigeminal-tract-in-medulla'),
  faceBeyondNucleus,
  partly(corticalShare.pain, other('sensory-cortex-face')),
);

const byArea = (face: Path, limb: (area: BodyArea) => Path): Readonly<Record<BodyArea, Path>> => ({
  face,
  arm: limb('arm'),
  hand: limb('hand'),
  leg: limb('leg'),
  foot: limb('foot'),
});

/** The long pathways above the foramen magnum, each seen from the side of the body that it serves. */
export const longTracts: LongTract = {
  motor: byArea(corticobulbar, limbMotor),
  position: byArea(facePosition, limbPosition),
  pain: byArea(facePain, limbPain),
  source: recalled('blumenfeld', 'corticospinal tract, medial lemniscus, spinothalamic tract, trigeminal system'),
};
