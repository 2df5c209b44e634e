import { describe, expect, it } from 'vitest';
import type { StructureKey } from '../../src/anatomy/brain/structures.ts';
import { movements } from '../../src/anatomy/movements.ts';
import type { Faculty, Modality } from '../../src/anatomy/probe.ts';
import { skinPlace } from '../../src/anatomy/skin-places.ts';
import type { BodySide } from '../../src/kernel/side.ts';
import { facultyChance } from '../../src/localisation/forward/faculty.ts';
import { motorDeficit, motorItem } from '../../src/localisation/forward/motor.ts';
import { sensoryDeficit, sensoryItem } from '../../src/localisation/forward/sensory.ts';
import { hypotheses } from '../../src/localisation/hypotheses/hypotheses.ts';
import { type Hypothesis, hypothesis } from '../../src/localisation/hypothesis.ts';
import { LesionBuilder } from '../../src/localisation/lesion.ts';

const site = { key: 'test', label: 'Test', side: null, level: null, kind: 'brainstem' } as const;

/** Structures on the right cut through. */
function right(...structures: readonly StructureKey[]): Hypothesis {
  const lesion = new LesionBuilder();
  for (const structure of structures) lesion.brain('right', structure, 1);
  return hypothesis(site, 'test', 1, lesion.build());
}

/** The whole lesion of a site on the right, as the engine knows it. */
function wholeOnRight(key: string): Hypothesis {
  const found = hypotheses.find(
    ({ site: one, variant }) => one.key === key && one.side === 'right' && variant.endsWith('whole'),
  );
  if (found === undefined) throw new RangeError(key);
  return found;
}

const fails = (lesion: Hypothesis, faculty: Faculty, side: BodySide | 'midline') =>
  facultyChance(lesion, faculty, side);
const weak = (lesion: Hypothesis, movement: keyof typeof movements, side: BodySide) =>
  motorDeficit(lesion, motorItem(movements[movement], side)).total;

function numb(
  lesion: Hypothesis,
  modality: Modality,
  kind: 'dermatome' | 'landmark',
  key: string,
  side: BodySide,
): number {
  const place = skinPlace(kind, key);
  if (place === undefined) throw new RangeError(key);
  return sensoryDeficit(lesion, sensoryItem(place, modality, side)).total;
}

// Where each pathway crosses and what lies beside it: Blumenfeld, Neuroanatomy through Clinical Cases, brainstem chapters,
// and Brazis, Localization in Clinical Neurology, midbrain, pons and medulla (both recalled).
describe('crossed syndromes come out of the wiring', () => {
  it('ventral midbrain: third nerve on its side, face, arm and leg on the other', () => {
    const lesion = wholeOnRight('midbrain-ventral');
    expect(fails(lesion, 'oculomotor', 'right')).toBeGreaterThan(0.7);
    expect(fails(lesion, 'pupil-parasympathetic', 'right')).toBeGreaterThan(0.5);
    expect(fails(lesion, 'oculomotor', 'left')).toBeLessThan(0.05);
    expect(weak(lesion, 'finger-extension', 'left')).toBeGreaterThan(0.5);
    expect(weak(lesion, 'finger-extension', 'right')).toBeLessThan(0.05);
    expect(fails(lesion, 'lower-face', 'left')).toBeGreaterThan(0.6);
    expect(fails(lesion, 'upper-face', 'left')).toBeLessThan(0.2);
  });

  it('midbrain tegmentum: third nerve on its side, ataxia and tremor on the other', () => {
    const lesion = wholeOnRight('midbrain-tegmentum');
    expect(fails(lesion, 'oculomotor', 'right')).toBeGreaterThan(0.7);
    expect(fails(lesion, 'limb-coordination', 'left')).toBeGreaterThan(0.5);
    expect(fails(lesion, 'limb-coordination', 'right')).toBeLessThan(0.1);
    expect(fails(lesion, 'postural-tremor', 'left')).toBeGreaterThan(0.3);
  });

  it('base of the lower pons: sixth and seventh nerves on its side, arm and leg on the other, face there spared', () => {
    const lesion = right('basis-pontis', 'abducens-fascicle', 'facial-fascicle');
    expect(fails(lesion, 'abducens', 'right')).toBeGreaterThan(0.9);
    expect(fails(lesion, 'upper-face', 'right')).toBeGreaterThan(0.9);
    expect(weak(lesion, 'ankle-dorsiflexion', 'left')).toBeGreaterThan(0.6);
    expect(fails(lesion, 'lower-face', 'left')).toBeLessThan(0.05);
    expect(fails(lesion, 'gaze-horizontal', 'right')).toBeLessThan(0.05);
  });

  it('flank of the caudal midbrain: fourth nerve of the other side, small pupil on its own', () => {
    const lesion = right('trochlear-nucleus', 'sympathetic-fibres-in-midbrain');
    expect(fails(lesion, 'trochlear', 'left')).toBeGreaterThan(0.9);
    expect(fails(lesion, 'trochlear', 'right')).toBeLessThan(0.05);
    expect(fails(lesion, 'sympathetic-eye', 'right')).toBeGreaterThan(0.9);
  });

  it('half of the medulla below the crossing: limbs and position on its side, pain on the other', () => {
    const lesion = right('crossed-corticospinal-fibres', 'dorsal-column-nuclei', 'spinothalamic-tract-in-medulla');
    expect(weak(lesion, 'hip-flexion', 'right')).toBeGreaterThan(0.7);
    expect(weak(lesion, 'hip-flexion', 'left')).toBeLessThan(0.05);
    expect(numb(lesion, 'joint-position', 'dermatome', 'L5', 'right')).toBeGreaterThan(0.6);
    expect(numb(lesion, 'pinprick', 'dermatome', 'L5', 'left')).toBeGreaterThan(0.8);
  });

  it('nucleus of the sixth nerve: gaze to its side fails, not the one eye alone', () => {
    const lesion = right('abducens-nucleus');
    expect(fails(lesion, 'gaze-horizontal', 'right')).toBeGreaterThan(0.9);
    expect(fails(right('abducens-nerve'), 'gaze-horizontal', 'right')).toBeLessThan(0.05);
  });

  it('lateral medulla: pain lost in the face on its side and in the limbs on the other, position kept', () => {
    const lesion = wholeOnRight('medulla-lateral');
    expect(numb(lesion, 'pinprick', 'landmark', 'forehead', 'right')).toBeGreaterThan(0.7);
    expect(numb(lesion, 'pinprick', 'landmark', 'forehead', 'left')).toBeLessThan(0.05);
    expect(numb(lesion, 'pinprick', 'dermatome', 'L5', 'left')).toBeGreaterThan(0.8);
    expect(numb(lesion, 'pinprick', 'dermatome', 'L5', 'right')).toBeLessThan(0.05);
    expect(numb(lesion, 'joint-position', 'dermatome', 'L5', 'left')).toBeLessThan(0.05);
    expect(fails(lesion, 'sympathetic-eye', 'right')).toBeGreaterThan(0.7);
    expect(fails(lesion, 'palate', 'right')).toBeGreaterThan(0.6);
    expect(fails(lesion, 'limb-coordination', 'right')).toBeGreaterThan(0.5);
    expect(weak(lesion, 'hip-flexion', 'left')).toBeLessThan(0.05);
  });

  it('medial medulla: tongue on its side, arm, leg and position on the other, face and pain spared', () => {
    const lesion = wholeOnRight('medulla-medial');
    expect(fails(lesion, 'tongue', 'right')).toBeGreaterThan(0.7);
    expect(weak(lesion, 'finger-extension', 'left')).toBeGreaterThan(0.5);
    expect(numb(lesion, 'joint-position', 'dermatome', 'L5', 'left')).toBeGreaterThan(0.4);
    expect(numb(lesion, 'pinprick', 'dermatome', 'L5', 'left')).toBeLessThan(0.05);
    expect(fails(lesion, 'lower-face', 'left')).toBeLessThan(0.05);
  });

  it('lower lateral pons: hearing, face and pain of the face on its side, pain of the limbs on the other', () => {
    const lesion = wholeOnRight('pons-lateral');
    expect(fails(lesion, 'hearing', 'right')).toBeGreaterThan(0.6);
    expect(fails(lesion, 'upper-face', 'right')).toBeGreaterThan(0.7);
    expect(numb(lesion, 'pinprick', 'landmark', 'cheek', 'right')).toBeGreaterThan(0.6);
    expect(numb(lesion, 'pinprick', 'dermatome', 'C6', 'left')).toBeGreaterThan(0.6);
    expect(fails(lesion, 'palate', 'right')).toBeLessThan(0.1);
  });
});

// The visual pathway: Brazis, visual pathways (recalled).
describe('field loss follows the visual pathway', () => {
  it('behind the chiasm it is of the other half of space and leaves sharp sight alone', () => {
    const tract = right('optic-tract');
    expect(fails(tract, 'visual-field-half', 'left')).toBeGreaterThan(0.9);
    expect(fails(tract, 'visual-field-half', 'right')).toBeLessThan(0.02);
    expect(fails(tract, 'visual-acuity', 'left')).toBeLessThan(0.1);
    expect(fails(tract, 'pupil-afferent', 'left')).toBeGreaterThan(0.2);
  });

  it('the lower radiation loses the upper quarter, the upper radiation the lower', () => {
    const lower = right('lower-optic-radiation');
    expect(fails(lower, 'visual-field-upper-quadrant', 'left')).toBeGreaterThan(0.9);
    expect(fails(lower, 'visual-field-lower-quadrant', 'left')).toBeLessThan(0.02);
    expect(fails(lower, 'visual-field-half', 'left')).toBeLessThan(0.02);
    expect(fails(right('upper-optic-radiation'), 'visual-field-lower-quadrant', 'left')).toBeGreaterThan(0.9);
  });

  it('a closed artery of the retina takes the light reflex, other disease of the retina mostly leaves it', () => {
    expect(fails(right('inner-retina'), 'pupil-afferent', 'right')).toBeGreaterThan(0.8);
    expect(fails(right('retina'), 'pupil-afferent', 'right')).toBeLessThan(0.4);
  });

  it('a blind eye may have no reaction to light, and of two dim eyes neither has the worse pupil', () => {
    expect(fails(right('optic-nerve'), 'light-perception', 'right')).toBeGreaterThan(0.1);
    expect(fails(right('oculomotor-nerve'), 'light-perception', 'right')).toBeLessThan(0.02);
  });

  it('the whole of a scene is lost with both upper parietal lobes, hardly with one', () => {
    const both = new LesionBuilder()
      .brain('left', 'superior-parietal-lobule', 1)
      .brain('right', 'superior-parietal-lobule', 1);
    expect(fails(hypothesis(site, 'test', 1, both.build()), 'visual-recognition', 'midline')).toBeGreaterThan(0.5);
    expect(fails(right('superior-parietal-lobule'), 'visual-recognition', 'midline')).toBeLessThan(0.05);
  });

  it('who is blind from both occipital lobes may not know it, who is blind from one or from the eyes does', () => {
    const both = new LesionBuilder()
      .brain('left', 'occipital-cortex-above-calcarine', 1)
      .brain('right', 'occipital-cortex-above-calcarine', 1);
    expect(fails(hypothesis(site, 'test', 1, both.build()), 'awareness-of-sight', 'midline')).toBeGreaterThan(0.2);
    expect(fails(right('occipital-cortex-above-calcarine'), 'awareness-of-sight', 'midline')).toBeLessThan(0.02);
    expect(fails(right('optic-nerve'), 'awareness-of-sight', 'midline')).toBeLessThan(0.02);
  });

  it('in the optic nerve it is of one eye, with the light reflex', () => {
    const nerve = right('optic-nerve');
    expect(fails(nerve, 'visual-acuity', 'right')).toBeGreaterThan(0.9);
    expect(fails(nerve, 'pupil-afferent', 'right')).toBeGreaterThan(0.9);
    expect(fails(nerve, 'visual-field-half', 'left')).toBeLessThan(0.02);
  });
});

// Brazis, facial nerve and ocular motor nerves; Kissel 1983 on pupil-sparing palsies (recalled).
describe('cranial nerves', () => {
  it('the facial nerve takes the forehead, the fibres to its nucleus spare it', () => {
    expect(fails(right('facial-nerve-in-canal'), 'upper-face', 'right')).toBeGreaterThan(0.9);
    expect(fails(right('internal-capsule-genu'), 'lower-face', 'left')).toBeGreaterThan(0.9);
    expect(fails(right('internal-capsule-genu'), 'upper-face', 'left')).toBeLessThan(0.15);
  });

  it('the core of the third nerve moves the eye and its surface the pupil', () => {
    expect(fails(right('oculomotor-nerve'), 'pupil-parasympathetic', 'right')).toBeLessThan(0.05);
    expect(fails(right('pupil-fibres-of-oculomotor-nerve'), 'oculomotor', 'right')).toBeLessThan(0.05);
  });

  it('the third nucleus serves the superior rectus of the other eye as well, the nerve does not', () => {
    expect(fails(right('oculomotor-nucleus'), 'superior-rectus', 'left')).toBeGreaterThan(0.7);
    expect(fails(right('oculomotor-nucleus'), 'oculomotor', 'left')).toBeLessThan(0.05);
    expect(fails(right('oculomotor-nerve'), 'superior-rectus', 'left')).toBeLessThan(0.05);
  });

  it('the fourth nucleus serves the other eye', () => {
    expect(fails(right('trochlear-nucleus'), 'trochlear', 'left')).toBeGreaterThan(0.9);
    expect(fails(right('trochlear-nerve'), 'trochlear', 'right')).toBeGreaterThan(0.9);
  });

  it('nystagmus beats away from a lost labyrinth', () => {
    expect(fails(right('vestibular-nerve'), 'nystagmus-vestibular', 'left')).toBeGreaterThan(0.9);
    expect(fails(right('vestibular-nerve'), 'nystagmus-vestibular', 'right')).toBeLessThan(0.05);
    expect(fails(right('vestibular-nerve'), 'vestibular', 'right')).toBeGreaterThan(0.9);
  });
});

// Brazis, language, hemineglect, basal ganglia, cerebellum (recalled).
describe('hemispheres, basal ganglia and cerebellum', () => {
  it('language fails with the left hemisphere, attention to the left with the right one', () => {
    const left = new LesionBuilder().brain('left', 'inferior-frontal-gyrus', 1).build();
    expect(fails(hypothesis(site, 'test', 1, left), 'language-expression', 'midline')).toBeGreaterThan(0.7);
    expect(fails(right('inferior-frontal-gyrus'), 'language-expression', 'midline')).toBeLessThan(0.15);
    expect(fails(right('inferior-parietal-lobule'), 'spatial-attention', 'left')).toBeGreaterThan(0.6);
    expect(fails(right('inferior-parietal-lobule'), 'spatial-attention', 'right')).toBeLessThan(0.1);
  });

  it('who has lost the inner face of both frontal lobes is silent, who has lost one speaks', () => {
    const both = new LesionBuilder()
      .brain('left', 'medial-frontal-cortex', 1)
      .brain('right', 'medial-frontal-cortex', 1);
    expect(fails(hypothesis(site, 'test', 1, both.build()), 'speech-initiation', 'midline')).toBeGreaterThan(0.7);
    expect(fails(right('medial-frontal-cortex'), 'speech-initiation', 'midline')).toBeLessThan(0.05);
  });

  it('one hemisphere leaves the palate, both lose it', () => {
    const both = new LesionBuilder()
      .brain('left', 'internal-capsule-genu', 1)
      .brain('right', 'internal-capsule-genu', 1);
    expect(fails(right('internal-capsule-genu'), 'pseudobulbar', 'midline')).toBeLessThan(0.05);
    expect(fails(hypothesis(site, 'test', 1, both.build()), 'pseudobulbar', 'midline')).toBeGreaterThan(0.9);
  });

  it('the cerebellum serves its own side, the basal ganglia the other', () => {
    expect(fails(right('cerebellar-hemisphere'), 'limb-coordination', 'right')).toBeGreaterThan(0.9);
    expect(fails(right('cerebellar-hemisphere'), 'limb-coordination', 'left')).toBeLessThan(0.05);
    expect(fails(right('substantia-nigra'), 'bradykinesia', 'left')).toBeGreaterThan(0.8);
    expect(fails(right('subthalamic-nucleus'), 'ballism', 'left')).toBeGreaterThan(0.7);
  });

  it('the vermis sets the size of saccades', () => {
    const vermis = new LesionBuilder().brain('left', 'cerebellar-vermis', 1).build();
    expect(fails(hypothesis(site, 'test', 1, vermis), 'saccade-accuracy', 'midline')).toBeGreaterThan(0.6);
  });

  // Arch Neurol 1981;38:601 (read); Adams and Victor, asterixis (recalled).
  it('one hand flaps from the thalamus of the other side, both from a failing liver', () => {
    expect(fails(right('ventrolateral-nucleus'), 'asterixis', 'left')).toBeGreaterThan(0.3);
    expect(fails(right('ventrolateral-nucleus'), 'asterixis', 'right')).toBeLessThan(0.01);
    const clouded = hypotheses.find(
      ({ site: { key }, variant }) => `${key} ${variant}` === 'diffuse-encephalopathy clouded',
    );
    if (clouded === undefined) throw new RangeError('clouded');
    expect(fails(clouded, 'asterixis', 'midline')).toBeGreaterThan(0.4);
    expect(fails(clouded, 'asterixis', 'left')).toBeLessThan(0.05);
  });

  it('the middle of the motor cortex moves the foot, its side the hand', () => {
    expect(weak(right('motor-cortex-foot'), 'ankle-dorsiflexion', 'left')).toBeGreaterThan(0.8);
    expect(weak(right('motor-cortex-foot'), 'finger-abduction', 'left')).toBeLessThan(0.02);
    expect(weak(right('motor-cortex-hand'), 'finger-abduction', 'left')).toBeGreaterThan(0.6);
  });

  it('a mouth of which one half is weak lets saliva out, and its throat is sound', () => {
    const nerve = right('facial-nerve-in-canal');
    expect(fails(nerve, 'mouth-closure', 'midline')).toBeGreaterThan(0.4);
    expect(fails(nerve, 'swallowing', 'midline')).toBeLessThan(0.05);
  });

  it('a brain pressed down on both sides takes wakefulness, both pupils and the corneas', () => {
    const pressed = hypotheses.find(({ variant }) => variant === 'herniating-both');
    if (pressed === undefined) throw new RangeError('herniating-both');
    for (const side of ['left', 'right'] as const) {
      expect(fails(pressed, 'pupil-parasympathetic', side)).toBeGreaterThan(0.7);
      expect(fails(pressed, 'corneal', side)).toBeGreaterThan(0.5);
    }
    expect(fails(pressed, 'consciousness', 'midline')).toBeGreaterThan(0.9);
  });

  it('what spreads along one half of the base of the skull may reach the carotid canal', () => {
    const oneHalf = hypotheses.find(
      ({ site: { key }, variant }) => key === 'basal-meningeal-process' && variant === 'right-alone',
    );
    if (oneHalf === undefined) throw new RangeError('right-alone');
    expect(fails(oneHalf, 'sympathetic-eye', 'right')).toBeGreaterThan(0.2);
    expect(fails(oneHalf, 'sympathetic-eye', 'left')).toBeLessThan(0.05);
  });
});
