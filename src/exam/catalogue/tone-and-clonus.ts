import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, wider } from './code-links.ts';
import { sectionTable } from './section-table.ts';

/** Muscle tone; the item's key is the place where it is felt. */
export const tone = sectionTable(
  'tone',
  { scale: 'tone', sides: 'paired', region: 'upper-limbs', source: recalled('dejong', 'muscle tone') },
  {
    neck: {
      label: 'Tone of the neck',
      sides: 'midline',
      region: 'neck',
      hpoByValue: {
        spastic: wider('HP:0031867', 'Neck hypertonia'),
        rigid: wider('HP:0031867', 'Neck hypertonia'),
      },
      probe: { kind: 'tone' },
    },
    'upper-limb': {
      label: 'Tone of the upper limb',
      bodyPart: 'upper-limb',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: equivalent('HP:0006986', 'Upper limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    elbow: {
      label: 'Tone at the elbow',
      bodyPart: 'elbow',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: wider('HP:0006986', 'Upper limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    wrist: {
      label: 'Tone at the wrist',
      bodyPart: 'wrist',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: wider('HP:0006986', 'Upper limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    'lower-limb': {
      label: 'Tone of the lower limb',
      region: 'lower-limbs',
      bodyPart: 'lower-limb',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: equivalent('HP:0002061', 'Lower limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    knee: {
      label: 'Tone at the knee',
      region: 'lower-limbs',
      bodyPart: 'knee',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: wider('HP:0002061', 'Lower limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    ankle: {
      label: 'Tone at the ankle',
      region: 'lower-limbs',
      bodyPart: 'ankle',
      hpoByValue: {
        reduced: wider('HP:0012389', 'Appendicular hypotonia'),
        spastic: wider('HP:0002061', 'Lower limb spasticity'),
        rigid: wider('HP:0002063', 'Rigidity'),
      },
      probe: { kind: 'tone' },
    },
    trunk: {
      label: 'Tone of the trunk',
      sides: 'midline',
      region: 'trunk',
      hpoByValue: {
        reduced: equivalent('HP:0008936', 'Axial hypotonia'),
        rigid: inexact('HP:0003306', 'Spinal rigidity'),
      },
      probe: { kind: 'tone' },
    },
  },
);

/** Clonus in beats; the item's key is the joint where it is tried. */
export const clonus = sectionTable(
  'clonus',
  { scale: 'beats', sides: 'paired', region: 'lower-limbs', source: commonPractice },
  {
    jaw: {
      label: 'Jaw clonus',
      sides: 'midline',
      region: 'head',
      hpo: wider('HP:0002169', 'Clonus'),
      probe: { kind: 'clonus', reflex: 'jaw' },
    },
    wrist: {
      label: 'Wrist clonus',
      region: 'upper-limbs',
      bodyPart: 'wrist',
      hpo: wider('HP:0002169', 'Clonus'),
      probe: { kind: 'clonus', reflex: 'finger-flexor' },
    },
    knee: {
      label: 'Knee (patellar) clonus',
      bodyPart: 'knee',
      hpo: equivalent('HP:0011449', 'Knee clonus'),
      probe: { kind: 'clonus', reflex: 'knee' },
    },
    ankle: {
      label: 'Ankle clonus',
      bodyPart: 'foot',
      hpo: equivalent('HP:0011448', 'Ankle clonus'),
      probe: { kind: 'clonus', reflex: 'ankle' },
    },
  },
);
