import { recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, narrower, wider } from './code-links.ts';
import { anyFaculty, faculty, failsButSpares, recordedOnly, weaknessOf } from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Cranial nerves V and VII to XII, with the voice, speech and swallowing. */
export const lowerCranialSigns = sectionTable(
  'cranialNerves',
  { scale: 'presence', sides: 'paired', region: 'head', source: recalled('brazis', 'cranial nerves') },
  {
    // V
    'facial-numbness': {
      label: 'Loss of sensation over the face',
      bodyPart: 'face',
      hpo: inexact('HP:0031912', 'Trigeminal anesthesia'),
      probe: faculty('trigeminal-sensation'),
    },
    'absent-corneal-reflex': {
      label: 'Absent or reduced corneal reflex',
      bodyPart: 'eye',
      hpo: equivalent('HP:0008000', 'Decreased corneal reflex'),
      probe: faculty('corneal'),
    },
    'jaw-weakness': {
      label: 'Weakness of jaw closure',
      sides: 'optional',
      bodyPart: 'face',
      hpo: equivalent('HP:0032520', 'Masseter muscular weakness'),
      probe: anyFaculty('jaw-power', 'pseudobulbar'),
    },
    trismus: {
      label: 'Jaw that cannot be opened (trismus)',
      sides: 'midline',
      hpo: equivalent('HP:0000211', 'Trismus'),
      probe: recordedOnly,
    },
    'jaw-deviation': {
      label: 'Jaw deviates to this side on opening',
      bodyPart: 'face',
      probe: { kind: 'faculty', faculty: 'jaw-power', needsOther: true },
    },

    // VII
    'facial-weakness': {
      label: 'Weakness of the whole half of the face',
      bodyPart: 'face',
      hpo: equivalent('HP:0010628', 'Facial palsy'),
      probe: faculty('upper-face'),
    },
    'lower-facial-weakness': {
      label: 'Weakness of the lower face with spared forehead',
      bodyPart: 'face',
      hpo: wider('HP:0030319', 'Weakness of facial musculature'),
      probe: failsButSpares('lower-face', 'upper-face'),
    },
    'upper-facial-weakness': {
      label: 'Weakness of forehead or eye closure',
      bodyPart: 'face',
      hpo: narrower('HP:0012507', 'Weakness of orbicularis oculi muscle'),
      probe: faculty('upper-face'),
    },
    'bells-phenomenon': {
      label: 'Eye turns up on failed closure (Bell phenomenon)',
      bodyPart: 'eye',
      hpo: inexact('HP:0030003', 'Paralytic lagophthalmos'),
      probe: faculty('upper-face'),
    },
    'facial-synkinesis': {
      label: 'Synkinesis of the face',
      bodyPart: 'face',
      hpo: equivalent('HP:0034979', 'Facial synkinesis'),
      probe: recordedOnly,
    },
    'facial-myokymia': {
      label: 'Facial myokymia',
      bodyPart: 'face',
      hpo: equivalent('HP:0000317', 'Facial myokymia'),
      probe: recordedOnly,
    },
    'loss-of-taste': {
      label: 'Loss of taste on the front of the tongue',
      bodyPart: 'tongue',
      sides: 'optional',
      hpo: inexact('HP:0041051', 'Ageusia'),
      probe: faculty('taste'),
    },
    hyperacusis: {
      label: 'Hyperacusis',
      bodyPart: 'ear',
      hpo: equivalent('HP:0010780', 'Hyperacusis'),
      probe: faculty('stapedius'),
    },

    // VIII
    'hearing-loss': {
      label: 'Hearing loss',
      bodyPart: 'ear',
      hpo: equivalent('HP:0000365', 'Hearing impairment'),
      probe: faculty('hearing'),
    },
    'conductive-hearing-loss': {
      label: 'Conductive pattern on the tuning-fork tests',
      bodyPart: 'ear',
      hpo: equivalent('HP:0000405', 'Conductive hearing impairment'),
      probe: recordedOnly,
    },
    'abnormal-head-impulse': {
      label: 'Corrective saccade on turning the head to this side',
      bodyPart: 'ear',
      hpo: equivalent('HP:0430122', 'Head impulse test has corrective saccade'),
      probe: faculty('vestibular'),
    },

    // IX, X
    'palatal-weakness': {
      label: 'Weakness of the palate on this side with the uvula drawn to the other',
      sides: 'optional',
      hpo: wider('HP:0430014', 'Abnormality of musculature of soft palate'),
      probe: faculty('palate'),
    },
    'absent-gag-reflex': { label: 'Absent gag reflex', sides: 'optional', probe: faculty('gag') },
    'volitional-bulbar-palsy': {
      label: 'Face, tongue and throat that yawn and laugh but do not obey the will',
      sides: 'midline',
      probe: faculty('pseudobulbar'),
      source: recalled('brazis', 'bilateral anterior opercular syndrome'),
    },
    'brisk-gag-reflex': { label: 'Brisk gag reflex', sides: 'midline', probe: faculty('pseudobulbar') },
    'pharyngeal-sensory-loss': {
      label: 'Loss of sensation of the pharynx',
      sides: 'optional',
      probe: faculty('gag'),
    },
    dysphagia: {
      label: 'Dysphagia on a swallowing test',
      sides: 'midline',
      hpo: equivalent('HP:0002015', 'Dysphagia'),
      probe: anyFaculty('swallowing', 'pseudobulbar', 'palate'),
    },
    'weak-suck-or-cry': {
      label: 'Weak suck or cry of an infant',
      sides: 'midline',
      probe: anyFaculty('swallowing', 'voice', 'palate'),
    },
    drooling: {
      label: 'Drooling',
      sides: 'midline',
      hpo: equivalent('HP:0002307', 'Drooling'),
      probe: anyFaculty('swallowing', 'mouth-closure'),
    },
    dysphonia: {
      label: 'Dysphonia',
      sides: 'midline',
      hpo: equivalent('HP:0001618', 'Dysphonia'),
      probe: faculty('voice'),
    },
    'bovine-cough': { label: 'Cough without a sharp start', sides: 'midline', probe: faculty('voice') },
    'vocal-cord-paralysis': {
      label: 'Vocal cord paralysis',
      hpo: equivalent('HP:0001605', 'Vocal cord paralysis'),
      probe: faculty('voice'),
    },
    dysarthria: {
      label: 'Dysarthria',
      sides: 'midline',
      hpo: equivalent('HP:0001260', 'Dysarthria'),
      probe: anyFaculty('speech-articulation', 'speech-cerebellar', 'pseudobulbar', 'tongue-denervation'),
    },
    'flaccid-dysarthria': {
      label: 'Flaccid (bulbar) dysarthria',
      sides: 'midline',
      hpo: wider('HP:0001260', 'Dysarthria'),
      probe: anyFaculty('tongue-denervation', 'palate', 'voice-fatigability'),
    },
    'nasal-speech': {
      label: 'Nasal speech',
      sides: 'midline',
      hpo: equivalent('HP:0001611', 'Hypernasal speech'),
      probe: anyFaculty('palate', 'pseudobulbar'),
    },
    'spastic-dysarthria': {
      label: 'Spastic dysarthria',
      sides: 'midline',
      hpo: equivalent('HP:0002464', 'Spastic dysarthria'),
      probe: faculty('pseudobulbar'),
    },
    'cerebellar-dysarthria': {
      label: 'Cerebellar (scanning) dysarthria',
      sides: 'midline',
      hpo: equivalent('HP:0002168', 'Scanning speech'),
      probe: faculty('speech-cerebellar'),
    },
    'hypokinetic-dysarthria': {
      label: 'Quiet, monotonous speech',
      sides: 'midline',
      hpo: equivalent('HP:0031435', 'Monotonic speech'),
      probe: faculty('axial-bradykinesia'),
    },

    // XI
    'sternocleidomastoid-weakness': {
      label: 'Weakness of sternocleidomastoid',
      region: 'neck',
      bodyPart: 'neck',
      hpo: wider('HP:0010825', 'Abnormality of the eleventh cranial nerve'),
      probe: faculty('accessory'),
    },
    'trapezius-weakness': {
      label: 'Weakness of trapezius',
      region: 'neck',
      bodyPart: 'shoulder',
      hpo: wider('HP:0010825', 'Abnormality of the eleventh cranial nerve'),
      loinc: inexact('32474-9', 'Physical findings shoulder shrug'),
      probe: weaknessOf('shoulder-shrug'),
    },

    // XII
    'tongue-deviation': {
      label: 'Tongue deviates to this side',
      bodyPart: 'tongue',
      hpo: wider('HP:0010826', 'Abnormality of the twelfth cranial nerve'),
      probe: { kind: 'faculty', faculty: 'tongue', needsOther: true },
    },
    'tongue-weakness': {
      label: 'Weakness of this half of the tongue, which pushes into the other cheek',
      sides: 'optional',
      bodyPart: 'tongue',
      hpo: equivalent('HP:0000183', 'Tongue muscle weakness'),
      probe: anyFaculty('tongue', 'tongue-denervation'),
    },
    'tongue-wasting': {
      label: 'Wasting of the tongue',
      sides: 'optional',
      bodyPart: 'tongue',
      hpo: equivalent('HP:0012473', 'Tongue atrophy'),
      probe: faculty('tongue-denervation'),
    },
    'tongue-fasciculation': {
      label: 'Fasciculation of the tongue',
      sides: 'optional',
      bodyPart: 'tongue',
      hpo: equivalent('HP:0001308', 'Tongue fasciculations'),
      probe: faculty('tongue-denervation'),
    },
    'spastic-tongue': {
      label: 'Small, stiff tongue with slow movements',
      sides: 'midline',
      bodyPart: 'tongue',
      hpo: equivalent('HP:0025747', 'Tongue spasticity'),
      probe: faculty('pseudobulbar'),
    },
  },
);
