import { commonPractice, recalled } from '../../kernel/cite.ts';
import { equivalent, inexact, wider } from './code-links.ts';
import { anyFaculty, faculty, recordedOnly } from './probes.ts';
import { sectionTable } from './section-table.ts';

/** Consciousness, cognition, language, perception and behaviour. The coma scale is scored by its parts, in `coma-scale.ts`. */
export const higherFunction = sectionTable(
  'higherFunction',
  { scale: 'presence', sides: 'midline', region: 'head', source: recalled('dejong', 'mental status examination') },
  {
    drowsiness: {
      label: 'Drowsiness',
      hpo: equivalent('HP:0002329', 'Drowsiness'),
      probe: faculty('consciousness'),
    },
    coma: { label: 'Coma', hpo: equivalent('HP:0001259', 'Coma'), probe: faculty('consciousness') },
    stupor: { label: 'Stupor', probe: faculty('consciousness') },
    'fluctuating-consciousness': {
      label: 'Fluctuating consciousness',
      hpo: equivalent('HP:0007159', 'Fluctuations in consciousness'),
      probe: faculty('consciousness'),
    },
    agitation: { label: 'Agitation', probe: recordedOnly, source: commonPractice },
    confusion: { label: 'Confusion', hpo: equivalent('HP:0001289', 'Confusion'), probe: faculty('attention') },
    disorientation: { label: 'Disorientation in time, place or person', probe: faculty('orientation') },
    inattention: {
      label: 'Inattention',
      hpo: inexact('HP:0000736', 'Short attention span'),
      probe: faculty('attention'),
    },
    'memory-impairment': {
      label: 'Memory impairment',
      hpo: equivalent('HP:0002354', 'Memory impairment'),
      probe: faculty('memory'),
    },
    amnesia: {
      label: 'Unable to lay down new memories',
      hpo: equivalent('HP:0033689', 'Anterograde memory impairment'),
      probe: faculty('memory'),
    },
    'executive-dysfunction': {
      label: 'Executive dysfunction',
      hpo: equivalent('HP:0033051', 'Impaired executive functioning'),
      probe: faculty('executive'),
    },

    'expressive-aphasia': {
      label: 'Expressive (non-fluent) aphasia',
      hpo: equivalent('HP:0002427', 'Expressive aphasia'),
      probe: faculty('language-expression'),
    },
    'receptive-aphasia': {
      label: 'Receptive (fluent) aphasia',
      hpo: equivalent('HP:0033848', 'Receptive aphasia'),
      probe: faculty('language-comprehension'),
    },
    'global-aphasia': {
      label: 'Global aphasia',
      hpo: wider('HP:0002381', 'Aphasia'),
      probe: faculty('language-comprehension'),
    },
    anomia: { label: 'Anomia', hpo: inexact('HP:0030784', 'Anomic aphasia'), probe: faculty('language-repetition') },
    'impaired-repetition': {
      label: 'Impaired repetition of speech',
      hpo: wider('HP:0002381', 'Aphasia'),
      probe: faculty('language-repetition'),
    },
    mutism: {
      label: 'Mutism',
      hpo: equivalent('HP:0002300', 'Mutism'),
      probe: anyFaculty('language-expression', 'speech-initiation'),
    },
    'speech-apraxia': {
      label: 'Apraxia of speech',
      hpo: equivalent('HP:0011098', 'Speech apraxia'),
      probe: faculty('language-expression'),
    },
    alexia: { label: 'Alexia', hpo: equivalent('HP:0010523', 'Alexia'), probe: faculty('reading') },
    agraphia: {
      label: 'Agraphia',
      hpo: inexact('HP:0010526', 'Dysgraphia'),
      // Who has lost language does not write either.
      probe: anyFaculty('calculation', 'language-expression', 'language-comprehension'),
    },
    acalculia: { label: 'Acalculia', hpo: inexact('HP:0002442', 'Dyscalculia'), probe: faculty('calculation') },
    'left-right-disorientation': {
      label: 'Confusion of left and right',
      hpo: equivalent('HP:6000000', 'Left-right disorientation'),
      probe: faculty('calculation'),
    },
    'finger-agnosia': {
      label: 'Finger agnosia',
      hpo: equivalent('HP:0010525', 'Finger agnosia'),
      probe: faculty('calculation'),
    },

    neglect: { label: 'Neglect of this side', sides: 'paired', probe: faculty('spatial-attention') },
    'sensory-extinction': {
      label: 'Extinction of touch on this side',
      sides: 'paired',
      probe: faculty('spatial-attention'),
    },
    'visual-extinction': {
      label: 'Extinction of sight on this side',
      sides: 'paired',
      probe: faculty('spatial-attention'),
    },
    anosognosia: {
      label: 'Unaware of the deficit (anosognosia)',
      probe: anyFaculty('construction', 'awareness-of-sight'),
    },
    'constructional-apraxia': {
      label: 'Impaired drawing and copying',
      hpo: equivalent('HP:0010794', 'Impaired visuospatial constructive cognition'),
      probe: faculty('construction'),
    },
    apraxia: {
      label: 'Limb apraxia',
      sides: 'optional',
      hpo: equivalent('HP:0030217', 'Limb apraxia'),
      probe: faculty('praxis'),
    },
    'dressing-apraxia': {
      label: 'Dressing apraxia',
      hpo: wider('HP:0002186', 'Apraxia'),
      probe: faculty('construction'),
    },
    'visual-agnosia': {
      label: 'Visual agnosia',
      hpo: equivalent('HP:0030222', 'Visual agnosia'),
      probe: faculty('visual-recognition'),
    },
    simultanagnosia: { label: 'Simultanagnosia', probe: faculty('visual-recognition') },
    'optic-ataxia': {
      label: 'Optic ataxia',
      sides: 'optional',
      hpo: equivalent('HP:0031868', 'Optic ataxia'),
      probe: faculty('construction'),
    },
    'ocular-apraxia': { label: 'Ocular motor apraxia', probe: recordedOnly },
    prosopagnosia: {
      label: 'Prosopagnosia',
      hpo: equivalent('HP:0010528', 'Prosopagnosia'),
      probe: faculty('visual-recognition'),
    },
    astereognosis: {
      label: 'Astereognosis',
      sides: 'paired',
      bodyPart: 'hand',
      hpo: equivalent('HP:0010527', 'Astereognosis'),
      probe: faculty('cortical-sensation'),
    },
    agraphaesthesia: {
      label: 'Agraphaesthesia',
      sides: 'paired',
      bodyPart: 'hand',
      hpo: equivalent('HP:0011812', 'Agraphesthesia'),
      probe: faculty('cortical-sensation'),
    },
    'impaired-two-point-discrimination': {
      label: 'Impaired two-point discrimination',
      sides: 'paired',
      bodyPart: 'hand',
      hpo: equivalent('HP:0011810', 'Impaired two-point discrimination'),
      probe: {
        kind: 'faculty',
        faculty: 'cortical-sensation',
        orSkin: ['thumb', 'index-finger', 'little-finger'],
      },
    },

    'frontal-release-signs': {
      label: 'Frontal release signs',
      hpo: equivalent('HP:0000743', 'Frontal release signs'),
      probe: faculty('frontal-release'),
    },
    'grasp-reflex': {
      label: 'Grasp reflex',
      sides: 'optional',
      bodyPart: 'hand',
      hpo: equivalent('HP:0030903', 'Grasp reflex'),
      probe: faculty('frontal-release'),
    },
    'palmomental-reflex': {
      label: 'Palmomental reflex',
      sides: 'optional',
      hpo: equivalent('HP:0030902', 'Palmomental reflex'),
      probe: faculty('frontal-release'),
    },
    'glabellar-reflex': {
      label: 'Glabellar tap without habituation',
      hpo: equivalent('HP:0030904', 'Glabellar reflex'),
      probe: faculty('frontal-release'),
    },
    'snout-reflex': {
      label: 'Snout reflex',
      hpo: equivalent('HP:0030905', 'Snout reflex'),
      probe: faculty('frontal-release'),
    },
    'pseudobulbar-affect': {
      label: 'Involuntary laughing or crying (pseudobulbar affect)',
      hpo: equivalent('HP:0002193', 'Pseudobulbar affect'),
      probe: faculty('pseudobulbar'),
    },
    'motor-impersistence': {
      label: 'Motor impersistence',
      probe: recordedOnly,
      source: recalled('adams-victor', 'chorea'),
    },
    apathy: { label: 'Apathy', hpo: equivalent('HP:0000741', 'Apathy'), probe: faculty('mood-behaviour') },
    disinhibition: {
      label: 'Disinhibition',
      hpo: equivalent('HP:0000734', 'Disinhibition'),
      probe: faculty('mood-behaviour'),
    },
    catatonia: { label: 'Catatonia', probe: recordedOnly },
    hallucinations: {
      label: 'Hallucinations',
      hpo: equivalent('HP:0000738', 'Hallucinations'),
      probe: faculty('mood-behaviour'),
    },
    delusions: { label: 'Delusions', sides: 'midline', probe: recordedOnly, source: commonPractice },
    palilalia: {
      label: 'Palilalia',
      sides: 'midline',
      hpo: equivalent('HP:0031814', 'Palilalia'),
      probe: recordedOnly,
      source: recalled('adams-victor', 'disorders of speech'),
    },
    'low-mood': { label: 'Low mood on examination', probe: faculty('mood-behaviour') },
  },
);
