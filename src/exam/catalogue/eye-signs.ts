import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, narrower, wider } from './code-links.ts';
import { anyFaculty, faculty, failsButSpares, failTogether, recordedOnly } from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Cranial nerves I to IV and VI: smell, sight, pupils, lids and eye movements. */
export const eyeSigns = sectionTable(
  'cranialNerves',
  {
    scale: 'presence',
    sides: 'paired',
    region: 'head',
    source: recalled('brazis', 'visual pathways and eye movements'),
  },
  {
    // I
    anosmia: {
      label: 'Loss of smell',
      sides: 'optional',
      hpo: equivalent('HP:0000458', 'Anosmia'),
      probe: faculty('smell'),
    },

    // II
    'reduced-visual-acuity': {
      label: 'Reduced visual acuity',
      bodyPart: 'eye',
      hpo: equivalent('HP:0007663', 'Reduced visual acuity'),
      probe: faculty('visual-acuity'),
    },
    'reduced-colour-vision': {
      label: 'Reduced colour vision',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000551', 'Color vision defect'),
      probe: faculty('colour-vision'),
    },
    'central-scotoma': {
      label: 'Central scotoma',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000603', 'Central scotoma'),
      probe: faculty('central-field'),
    },
    'altitudinal-field-defect': {
      label: 'Altitudinal field defect',
      bodyPart: 'eye',
      hpo: equivalent('HP:0030531', 'Altitudinal visual field defect'),
      probe: faculty('altitudinal-field'),
    },
    'monocular-field-defect': {
      label: 'Visual field defect of this eye alone',
      bodyPart: 'eye',
      hpo: wider('HP:0001123', 'Visual field defect'),
      probe: anyFaculty('altitudinal-field', 'central-field', 'junctional-field'),
    },
    'constricted-visual-field': {
      label: 'Constricted visual field',
      bodyPart: 'eye',
      hpo: wider('HP:0001123', 'Visual field defect'),
      probe: faculty('altitudinal-field'),
    },
    'homonymous-hemianopia': {
      label: 'Homonymous hemianopia, this side of space',
      hpo: equivalent('HP:0030516', 'Homonymous hemianopia'),
      probe: faculty('visual-field-half'),
    },
    'upper-quadrantanopia': {
      label: 'Homonymous upper quadrantanopia, this side of space',
      hpo: wider('HP:0001123', 'Visual field defect'),
      probe: failsButSpares('visual-field-upper-quadrant', 'visual-field-lower-quadrant'),
    },
    'lower-quadrantanopia': {
      label: 'Homonymous lower quadrantanopia, this side of space',
      hpo: wider('HP:0001123', 'Visual field defect'),
      probe: failsButSpares('visual-field-lower-quadrant', 'visual-field-upper-quadrant'),
    },
    'bitemporal-hemianopia': {
      label: 'Bitemporal hemianopia',
      sides: 'midline',
      hpo: equivalent('HP:0030521', 'Bitemporal hemianopia'),
      probe: faculty('visual-field-bitemporal'),
    },
    'relative-afferent-pupillary-defect': {
      label: 'Relative afferent pupillary defect',
      bodyPart: 'eye',
      hpo: equivalent('HP:0200057', 'Marcus Gunn pupil'),
      loinc: inexact('106805-5', 'Eye Pupillary response Swinging light test'),
      // Where both eyes are dimmed alike neither pupil is the worse one.
      probe: { kind: 'faculty', faculty: 'pupil-afferent', needsOther: true },
    },
    'optic-disc-swelling': {
      label: 'Swollen optic disc',
      bodyPart: 'eye',
      hpo: inexact('HP:0001085', 'Papilledema'),
      probe: faculty('optic-disc'),
    },
    'enlarged-blind-spot': {
      label: 'Enlarged blind spot',
      bodyPart: 'eye',
      hpo: wider('HP:0001123', 'Visual field defect'),
      probe: faculty('optic-disc'),
    },
    'optic-disc-pallor': {
      label: 'Pale optic disc',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000543', 'Optic disc pallor'),
      probe: faculty('optic-atrophy'),
    },

    'macular-star': {
      label: 'Macular star',
      bodyPart: 'eye',
      probe: recordedOnly,
    },
    'cherry-red-spot': {
      label: 'Cherry-red spot',
      bodyPart: 'eye',
      probe: recordedOnly,
    },

    'retinal-haemorrhages': {
      label: 'Retinal haemorrhages',
      bodyPart: 'eye',
      probe: recordedOnly,
      source: commonPractice,
    },

    // Pupils
    anisocoria: {
      label: 'Unequal pupils, this one abnormal',
      bodyPart: 'eye',
      hpo: equivalent('HP:0009916', 'Anisocoria'),
      probe: anyFaculty('pupil-parasympathetic', 'sympathetic-eye'),
    },
    'dilated-pupil': {
      label: 'Dilated pupil',
      bodyPart: 'eye',
      hpo: equivalent('HP:0011499', 'Mydriasis'),
      probe: anyFaculty('pupil-parasympathetic', 'light-perception-of-both-eyes'),
    },
    'unreactive-pupil': {
      label: 'Pupil unreactive to light',
      bodyPart: 'eye',
      hpo: wider('HP:0007695', 'Abnormal pupillary light reflex'),
      probe: anyFaculty('pupil-parasympathetic', 'light-perception'),
    },
    'sluggish-pupil': {
      label: 'Sluggish pupillary reaction to light',
      bodyPart: 'eye',
      hpo: wider('HP:0007695', 'Abnormal pupillary light reflex'),
      probe: anyFaculty('pupil-parasympathetic', 'pupil-afferent'),
    },
    'small-pupil': {
      label: 'Small pupil (miosis)',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000616', 'Miosis'),
      probe: faculty('sympathetic-eye'),
    },
    'tonic-pupil': {
      label: 'Tonic pupil',
      bodyPart: 'eye',
      hpo: equivalent('HP:0012074', 'Tonic pupil'),
      probe: faculty('tonic-pupil'),
    },
    'impaired-accommodation': {
      label: 'Impaired accommodation',
      bodyPart: 'eye',
      probe: anyFaculty('pupil-parasympathetic', 'tonic-pupil'),
    },
    'light-near-dissociation': {
      label: 'Light-near dissociation of the pupils',
      sides: 'optional',
      probe: anyFaculty('pretectal', 'tonic-pupil'),
    },
    'horner-syndrome': {
      label: 'Horner syndrome',
      bodyPart: 'eye',
      hpo: equivalent('HP:0002277', 'Horner syndrome'),
      probe: faculty('sympathetic-eye'),
    },

    // Lids
    ptosis: {
      label: 'Ptosis',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000508', 'Ptosis'),
      probe: anyFaculty('eyelid-elevation', 'sympathetic-eye', 'eye-movement-fatigue'),
    },
    'fatigable-ptosis': {
      label: 'Ptosis that varies or grows with fatigue',
      bodyPart: 'eye',
      probe: faculty('eye-movement-fatigue'),
      source: recalled('scherer-2005', 'bedside tests'),
    },
    'lid-retraction': { label: 'Lid retraction', bodyPart: 'eye', probe: anyFaculty('pretectal', 'lid-retraction') },
    'lid-lag': { label: 'Lid lag', bodyPart: 'eye', probe: recordedOnly, source: commonPractice },
    'eyelid-apraxia': {
      label: 'Apraxia of eyelid opening',
      sides: 'midline',
      hpo: equivalent('HP:0000658', 'Eyelid apraxia'),
      probe: faculty('axial-bradykinesia'),
    },
    'reduced-blinking': {
      label: 'Reduced blinking',
      sides: 'midline',
      hpo: equivalent('HP:0034774', 'Decreased blink rate'),
      probe: faculty('axial-bradykinesia'),
    },

    // III, IV, VI
    'eye-adduction-weakness': {
      label: 'Weak adduction of the eye',
      bodyPart: 'eye',
      probe: anyFaculty('oculomotor', 'internuclear'),
    },
    'eye-elevation-weakness': {
      label: 'Weak elevation of the eye',
      bodyPart: 'eye',
      probe: anyFaculty('oculomotor', 'superior-rectus', 'gaze-vertical'),
    },
    'eye-depression-weakness': {
      label: 'Weak depression of the eye',
      bodyPart: 'eye',
      probe: anyFaculty('oculomotor', 'trochlear'),
    },
    'third-nerve-palsy': {
      label: 'Third nerve palsy',
      bodyPart: 'eye',
      hpo: equivalent('HP:0012246', 'Oculomotor nerve palsy'),
      probe: faculty('oculomotor'),
    },
    'fourth-nerve-palsy': {
      label: 'Fourth nerve palsy',
      bodyPart: 'eye',
      hpo: equivalent('HP:0007011', 'Fourth cranial nerve palsy'),
      probe: faculty('trochlear'),
    },
    hypertropia: {
      label: 'Hypertropia of this eye',
      bodyPart: 'eye',
      probe: anyFaculty('trochlear', 'skew'),
    },
    'ocular-torsion': {
      label: 'Torsion of this eye',
      bodyPart: 'eye',
      probe: anyFaculty('skew', 'trochlear'),
    },
    'eye-abduction-weakness': {
      label: 'Weak abduction of the eye',
      bodyPart: 'eye',
      probe: faculty('abducens'),
    },
    'sixth-nerve-palsy': {
      label: 'Sixth nerve palsy',
      bodyPart: 'eye',
      hpo: equivalent('HP:0006897', 'Abducens palsy'),
      probe: faculty('abducens'),
    },
    esotropia: {
      label: 'Esotropia of this eye',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000565', 'Esotropia'),
      probe: faculty('abducens'),
    },
    exotropia: {
      label: 'Exotropia of this eye',
      bodyPart: 'eye',
      hpo: equivalent('HP:0000577', 'Exotropia'),
      probe: anyFaculty('oculomotor', 'internuclear', 'paralytic-divergence'),
    },
    diplopia: {
      label: 'Diplopia on examination',
      sides: 'midline',
      hpo: equivalent('HP:0000651', 'Diplopia'),
      probe: anyFaculty('oculomotor', 'trochlear', 'abducens', 'internuclear', 'skew', 'eye-movement-fatigue'),
    },
    'fatigable-diplopia': {
      label: 'Diplopia that varies or grows with fatigue',
      sides: 'midline',
      probe: faculty('eye-movement-fatigue'),
      source: recalled('scherer-2005', 'symptoms and bedside tests'),
    },
    ophthalmoplegia: {
      label: 'Ophthalmoplegia in several directions',
      sides: 'optional',
      hpo: inexact('HP:0000544', 'External ophthalmoplegia'),
      probe: failTogether('oculomotor', 'abducens', 'eye-movement-fatigue'),
    },
    'skew-deviation': { label: 'Skew deviation', sides: 'midline', probe: faculty('skew') },

    // Gaze and nystagmus
    'gaze-palsy': {
      label: 'Horizontal gaze palsy towards this side',
      hpo: inexact('HP:0007817', 'Horizontal supranuclear gaze palsy'),
      probe: faculty('gaze-horizontal'),
    },
    'forced-gaze-deviation': {
      label: 'Eyes driven away from this side',
      probe: faculty('gaze-horizontal'),
    },
    'absent-oculocephalic-reflex': {
      label: 'Absent oculocephalic reflex',
      sides: 'midline',
      probe: recordedOnly,
      source: commonPractice,
    },
    'vertical-gaze-palsy': {
      label: 'Vertical gaze palsy',
      sides: 'midline',
      hpo: inexact('HP:0000511', 'Vertical supranuclear gaze palsy'),
      probe: faculty('gaze-vertical'),
    },
    'upgaze-palsy': {
      label: 'Upgaze palsy',
      sides: 'midline',
      hpo: equivalent('HP:0025331', 'Upgaze palsy'),
      probe: anyFaculty('pretectal', 'gaze-vertical'),
    },
    'downgaze-palsy': {
      label: 'Downgaze palsy',
      sides: 'midline',
      hpo: equivalent('HP:0025330', 'Downgaze palsy'),
      probe: faculty('gaze-down'),
    },
    'impaired-convergence': {
      label: 'Impaired convergence',
      sides: 'midline',
      hpo: equivalent('HP:0000619', 'Impaired convergence'),
      probe: anyFaculty('pretectal', 'oculomotor', 'convergence'),
    },
    'convergence-retraction-nystagmus': {
      label: 'Convergence-retraction nystagmus',
      sides: 'midline',
      hpo: equivalent('HP:0025711', 'Convergence-retraction nystagmus'),
      probe: faculty('pretectal'),
    },
    'internuclear-ophthalmoplegia': {
      label: 'Internuclear ophthalmoplegia with failure of this eye to adduct',
      hpo: equivalent('HP:0030773', 'Internuclear ophthalmoplegia'),
      probe: faculty('internuclear'),
    },
    nystagmus: {
      label: 'Horizontal nystagmus, fast phase to this side',
      sides: 'optional',
      hpo: equivalent('HP:0000666', 'Horizontal nystagmus'),
      probe: anyFaculty('nystagmus-vestibular', 'nystagmus-gaze-evoked'),
    },
    'gaze-evoked-nystagmus': {
      label: 'Gaze-evoked nystagmus on looking to this side',
      sides: 'optional',
      hpo: equivalent('HP:0000640', 'Gaze-evoked nystagmus'),
      probe: faculty('nystagmus-gaze-evoked'),
    },
    'direction-changing-nystagmus': {
      label: 'Nystagmus that changes direction with gaze',
      sides: 'midline',
      probe: anyFaculty('nystagmus-central', 'nystagmus-gaze-evoked'),
    },
    'vertical-nystagmus': {
      label: 'Vertical nystagmus',
      sides: 'midline',
      hpo: equivalent('HP:0010544', 'Vertical nystagmus'),
      probe: anyFaculty('nystagmus-central', 'downbeat'),
    },
    'rebound-nystagmus': {
      label: 'Rebound nystagmus',
      sides: 'midline',
      probe: faculty('nystagmus-central'),
    },
    'downbeat-nystagmus': {
      label: 'Downbeat nystagmus',
      sides: 'midline',
      hpo: equivalent('HP:0010545', 'Downbeat nystagmus'),
      probe: faculty('downbeat'),
    },
    'upbeat-nystagmus': {
      label: 'Upbeat nystagmus',
      sides: 'midline',
      hpo: equivalent('HP:0011477', 'Upbeat nystagmus'),
      probe: faculty('nystagmus-central'),
    },
    'torsional-nystagmus': {
      label: 'Torsional nystagmus',
      sides: 'midline',
      probe: anyFaculty('nystagmus-central', 'nystagmus-vestibular'),
    },
    'pendular-nystagmus': {
      label: 'Pendular nystagmus',
      sides: 'midline',
      hpo: equivalent('HP:0012043', 'Pendular nystagmus'),
      probe: faculty('nystagmus-central'),
    },
    'monocular-nystagmus': { label: 'Nystagmus of this eye alone', bodyPart: 'eye', probe: recordedOnly },
    'eye-lateropulsion': {
      label: 'Eyes drawn to this side when they are not held by sight (lateropulsion)',
      probe: recordedOnly,
    },
    'broken-pursuit': {
      label: 'Broken smooth pursuit',
      sides: 'midline',
      hpo: equivalent('HP:0001152', 'Saccadic smooth pursuit interruptions'),
      probe: faculty('pursuit'),
    },
    'saccadic-dysmetria': {
      label: 'Over- or undershooting saccades',
      sides: 'midline',
      hpo: narrower('HP:0007338', 'Hypermetric saccades'),
      probe: faculty('saccade-accuracy'),
    },
    'slow-saccades': {
      label: 'Slow saccades',
      sides: 'midline',
      hpo: equivalent('HP:0000514', 'Slow saccadic eye movements'),
      probe: faculty('gaze-vertical'),
    },
    'saccadic-intrusions': {
      label: 'Saccadic intrusions (square-wave jerks)',
      sides: 'midline',
      hpo: equivalent('HP:0025402', 'Square-wave jerks'),
      probe: faculty('pursuit'),
    },
    'ocular-flutter': {
      label: 'Ocular flutter',
      sides: 'midline',
      probe: recordedOnly,
      source: commonPractice,
    },
    opsoclonus: {
      label: 'Opsoclonus',
      sides: 'midline',
      hpo: equivalent('HP:0010543', 'Opsoclonus'),
      probe: recordedOnly,
      source: commonPractice,
    },
  },
);
