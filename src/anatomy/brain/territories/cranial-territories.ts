import { recalled } from '../../../kernel/cite.ts';
import type { Territory } from '../territory.ts';

const visual = recalled('brazis', 'visual pathways');
const ocular = recalled('brazis', 'ocular motor nerves');
const lower = recalled('brazis', 'lower cranial nerves');
const pupil = recalled('brazis', 'pupil');

const thyroidEye = recalled('brazis', 'thyroid eye disease');

/** What runs through one cavernous sinus and is taken when both are. */
const cavernousNerves = {
  'oculomotor-nerve': 0.7,
  'pupil-fibres-of-oculomotor-nerve': 0.5,
  'trochlear-nerve': 0.5,
  'abducens-nerve': 0.7,
} as const;

/** The visual pathway, the cranial nerves, and the places at the base of the skull where several run together. */
export const cranialTerritories = {
  'olfactory-nerve': { label: 'Olfactory nerve or bulb', holds: { 'olfactory-nerve': 0.95 }, source: visual },
  'olfactory-nerve-both': {
    label: 'Olfactory nerve or bulb',
    holds: { 'olfactory-nerve': 0.95 },
    across: { 'olfactory-nerve': 0.95 },
    source: visual,
  },
  retina: { label: 'Retina', holds: { retina: 0.95 }, source: visual },
  'retinal-artery': {
    // The artery feeds the inner layers, where the fibres of the optic nerve begin.
    label: 'Retina',
    holds: { 'inner-retina': 0.95, retina: 0.3 },
    source: visual,
  },
  'optic-nerve': { label: 'Optic nerve', holds: { 'optic-nerve': 0.92 }, source: visual },
  'optic-nerve-head': { label: 'Optic nerve', holds: { 'optic-nerve-head': 0.95, 'optic-nerve': 0.5 }, source: visual },
  'optic-chiasm': { label: 'Optic chiasm', holds: { 'optic-chiasm': 0.95 }, source: visual },
  'optic-chiasm-and-nerve': {
    label: 'Optic chiasm',
    holds: { 'optic-chiasm': 0.8, 'optic-nerve': 0.7 },
    source: visual,
  },
  'optic-chiasm-and-ocular-nerves': {
    label: 'Optic chiasm',
    holds: {
      'optic-chiasm': 0.85,
      'optic-nerve': 0.5,
      'oculomotor-nerve': 0.65,
      'pupil-fibres-of-oculomotor-nerve': 0.4,
      'trochlear-nerve': 0.3,
      'abducens-nerve': 0.35,
    },
    source: recalled('pituitary-apoplexy-2011', 'fields and eye movements'),
  },
  'optic-tract-and-oculomotor-nerve': {
    label: 'Optic tract or lateral geniculate body',
    holds: { 'optic-tract': 0.9, 'oculomotor-nerve': 0.75, 'pupil-fibres-of-oculomotor-nerve': 0.7 },
    source: visual,
  },
  'optic-tract': {
    label: 'Optic tract or lateral geniculate body',
    holds: { 'optic-tract': 0.95 },
    source: visual,
  },
  'lateral-geniculate-body': {
    label: 'Optic tract or lateral geniculate body',
    holds: { 'lateral-geniculate-body': 0.9 },
    source: visual,
  },
  'optic-radiation-temporal': {
    label: 'Lower optic radiation in the temporal lobe',
    holds: { 'lower-optic-radiation': 0.95, 'superior-temporal-gyrus': 0.12, 'upper-optic-radiation': 0.1 },
    source: visual,
  },
  'optic-radiation-parietal': {
    label: 'Upper optic radiation in the parietal lobe',
    holds: { 'upper-optic-radiation': 0.95, 'inferior-parietal-lobule': 0.15, 'lower-optic-radiation': 0.1 },
    source: visual,
  },
  'oculomotor-nerve-compressed': {
    label: 'Oculomotor nerve',
    holds: { 'oculomotor-nerve': 0.92, 'pupil-fibres-of-oculomotor-nerve': 0.93 },
    source: ocular,
  },
  'oculomotor-nerve-core': {
    label: 'Oculomotor nerve',
    holds: { 'oculomotor-nerve': 0.93, 'pupil-fibres-of-oculomotor-nerve': 0.06 },
    source: ocular,
  },
  'trochlear-nerve': { label: 'Trochlear nerve', holds: { 'trochlear-nerve': 0.95 }, source: ocular },
  'abducens-nerve': { label: 'Abducens nerve', holds: { 'abducens-nerve': 0.95 }, source: ocular },
  'cavernous-sinus': {
    label: 'Cavernous sinus or superior orbital fissure',
    holds: {
      'oculomotor-nerve': 0.75,
      'pupil-fibres-of-oculomotor-nerve': 0.45,
      'trochlear-nerve': 0.7,
      'abducens-nerve': 0.85,
      'carotid-sympathetic-plexus': 0.4,
    },
    nerves: { 'ophthalmic-nerve': [0, 0.75], 'maxillary-nerve': [0, 0.35] },
    source: ocular,
  },
  'cavernous-sinus-both': {
    // The two sinuses are joined round the gland: clot, tumour and blood of the gland go across.
    label: 'Cavernous sinus or superior orbital fissure',
    holds: cavernousNerves,
    across: cavernousNerves,
    nerves: { 'ophthalmic-nerve': [0, 0.3] },
    source: ocular,
  },
  'cavernous-sinus-arterialised': {
    // Blood of the artery backs up into the orbit: the muscles swell and the retina starves.
    label: 'Cavernous sinus or superior orbital fissure',
    holds: {
      'oculomotor-nerve': 0.7,
      'pupil-fibres-of-oculomotor-nerve': 0.25,
      'trochlear-nerve': 0.5,
      'abducens-nerve': 0.8,
      'inner-retina': 0.3,
    },
    nerves: { 'ophthalmic-nerve': [0, 0.2] },
    source: recalled('brazis', 'carotid-cavernous fistula'),
  },
  'cavernous-sinus-third-nerve': {
    // What fills or presses the sinus may show in one nerve before it shows in the others.
    label: 'Cavernous sinus or superior orbital fissure',
    holds: {
      'oculomotor-nerve': 0.85,
      'pupil-fibres-of-oculomotor-nerve': 0.6,
      'trochlear-nerve': 0.25,
      'abducens-nerve': 0.1,
    },
    source: ocular,
  },
  'cavernous-sinus-sixth-nerve': {
    label: 'Cavernous sinus or superior orbital fissure',
    holds: { 'abducens-nerve': 0.92, 'oculomotor-nerve': 0.1, 'carotid-sympathetic-plexus': 0.35 },
    nerves: { 'ophthalmic-nerve': [0, 0.2] },
    source: ocular,
  },
  'cavernous-sinus-with-ganglion': {
    // What grows in the sinus goes back into the cave of the trigeminal ganglion and up to the optic nerve.
    label: 'Cavernous sinus or superior orbital fissure',
    holds: {
      'abducens-nerve': 0.8,
      'trigeminal-root': 0.65,
      'oculomotor-nerve': 0.5,
      'pupil-fibres-of-oculomotor-nerve': 0.3,
      'trochlear-nerve': 0.4,
      'optic-nerve': 0.25,
    },
    source: ocular,
  },
  'orbital-apex': {
    label: 'Orbital apex',
    holds: {
      'optic-nerve': 0.85,
      'oculomotor-nerve': 0.8,
      'pupil-fibres-of-oculomotor-nerve': 0.6,
      'trochlear-nerve': 0.75,
      'abducens-nerve': 0.8,
    },
    nerves: { 'ophthalmic-nerve': [0, 0.7] },
    source: ocular,
  },
  'swollen-eye-muscles': {
    // Muscles that do not let go hold the eye as palsied nerves would.
    label: 'Orbital apex',
    holds: { 'oculomotor-nerve': 0.15, 'abducens-nerve': 0.3 },
    source: thyroidEye,
  },
  'swollen-eye-muscles-both': {
    label: 'Orbital apex',
    holds: { 'oculomotor-nerve': 0.15, 'abducens-nerve': 0.3 },
    across: { 'oculomotor-nerve': 0.15, 'abducens-nerve': 0.3 },
    source: thyroidEye,
  },
  'trochlear-nerve-both': {
    label: 'Trochlear nerve',
    holds: { 'trochlear-nerve': 0.92 },
    across: { 'trochlear-nerve': 0.92 },
    source: ocular,
  },
  'abducens-nerve-both': {
    label: 'Abducens nerve',
    holds: { 'abducens-nerve': 0.92 },
    across: { 'abducens-nerve': 0.92 },
    source: ocular,
  },
  'facial-nerve-both': {
    label: 'Facial nerve',
    holds: { 'facial-nerve-in-canal': 0.92 },
    across: { 'facial-nerve-in-canal': 0.92 },
    source: lower,
  },
  'petrous-apex': {
    // The sixth nerve bends over the tip of the petrous bone, on which the trigeminal ganglion lies.
    label: 'Abducens nerve',
    holds: { 'abducens-nerve': 0.9, 'trigeminal-root': 0.75, 'facial-nerve-before-canal': 0.1 },
    source: recalled('brazis', 'petrous apex syndrome'),
  },
  'facial-nerve-irritated': {
    // A vessel beats on the root of the nerve: it fires, and the face keeps its strength.
    label: 'Facial nerve',
    holds: { 'facial-nerve-before-canal': 0.04 },
    source: recalled('brazis', 'hemifacial spasm'),
  },
  'trigeminal-nerve-both': {
    // The ganglia have no barrier between blood and nerve, so that what inflames connective tissue numbs both halves of the face.
    label: 'Trigeminal nerve, root or ganglion',
    holds: { 'trigeminal-root': 0.85 },
    across: { 'trigeminal-root': 0.75 },
    source: recalled('brazis', 'trigeminal sensory neuropathy'),
  },
  'oculomotor-nerve-both': {
    label: 'Oculomotor nerve',
    holds: { 'oculomotor-nerve': 0.85, 'pupil-fibres-of-oculomotor-nerve': 0.5 },
    across: { 'oculomotor-nerve': 0.85, 'pupil-fibres-of-oculomotor-nerve': 0.5 },
    source: ocular,
  },
  'cochlear-nerve-both': {
    label: 'Cochlear nerve or cochlea',
    holds: { 'cochlear-nerve': 0.92 },
    across: { 'cochlear-nerve': 0.92 },
    source: lower,
  },
  'recurrent-laryngeal-nerve-both': {
    label: 'Recurrent laryngeal nerve',
    holds: { 'recurrent-laryngeal-nerve': 0.9 },
    across: { 'recurrent-laryngeal-nerve': 0.9 },
    source: lower,
  },
  'hypoglossal-nerve-both': {
    label: 'Hypoglossal nerve',
    holds: { 'hypoglossal-nerve': 0.9 },
    across: { 'hypoglossal-nerve': 0.9 },
    source: lower,
  },
  'retina-both': { label: 'Retina', holds: { retina: 0.9 }, across: { retina: 0.9 }, source: visual },
  'optic-nerve-head-both': {
    label: 'Optic nerve',
    holds: { 'optic-nerve-head': 0.9, 'optic-nerve': 0.5 },
    across: { 'optic-nerve-head': 0.8, 'optic-nerve': 0.4 },
    source: visual,
  },
  'optic-nerves-inflamed-at-the-head': {
    label: 'Optic nerve',
    holds: { 'optic-nerve-head': 0.9, 'optic-nerve': 0.9 },
    across: { 'optic-nerve-head': 0.85, 'optic-nerve': 0.85 },
    source: visual,
  },
  'optic-nerve-both': {
    label: 'Optic nerve',
    holds: { 'optic-nerve': 0.85 },
    across: { 'optic-nerve': 0.85 },
    source: visual,
  },
  'vestibular-nerve-both': {
    label: 'Vestibular nerve or labyrinth',
    holds: { 'vestibular-nerve': 0.9 },
    across: { 'vestibular-nerve': 0.9 },
    source: lower,
  },
  'trigeminal-nerve': {
    label: 'Trigeminal nerve, root or ganglion',
    holds: { 'trigeminal-root': 0.92, 'trigeminal-motor-root': 0.5 },
    source: lower,
  },
  'facial-nerve-canal': {
    // Bell palsy takes some feeling of the face with it in a few.
    label: 'Facial nerve',
    holds: { 'facial-nerve-in-canal': 0.95, 'trigeminal-root': 0.03 },
    source: lower,
  },
  'facial-and-eighth-nerves': {
    label: 'Facial nerve',
    holds: { 'facial-nerve-in-canal': 0.92, 'vestibular-nerve': 0.75, 'cochlear-nerve': 0.65 },
    source: recalled('adams-victor', 'Ramsay Hunt syndrome'),
  },
  'facial-nerve-beyond': { label: 'Facial nerve', holds: { 'facial-nerve-beyond-canal': 0.95 }, source: lower },
  'vestibular-nerve': { label: 'Vestibular nerve or labyrinth', holds: { 'vestibular-nerve': 0.95 }, source: lower },
  'labyrinth-and-cochlea': {
    label: 'Vestibular nerve or labyrinth',
    holds: { 'vestibular-nerve': 0.9, 'cochlear-nerve': 0.85 },
    source: lower,
  },
  'semicircular-canal': {
    label: 'Vestibular nerve or labyrinth',
    holds: { 'semicircular-canals': 0.95 },
    source: lower,
  },
  'cochlear-nerve': { label: 'Cochlear nerve or cochlea', holds: { 'cochlear-nerve': 0.95 }, source: lower },
  'cerebellopontine-angle': {
    label: 'Cerebellopontine angle',
    holds: {
      'cochlear-nerve': 0.93,
      'vestibular-nerve': 0.7,
      'trigeminal-root': 0.55,
      'facial-nerve-before-canal': 0.5,
      'middle-cerebellar-peduncle': 0.45,
      'cerebellar-hemisphere': 0.2,
      // The flocculus lies in the angle itself.
      'flocculonodular-lobe': 0.2,
    },
    source: lower,
  },
  'cerebellopontine-angle-large': {
    label: 'Cerebellopontine angle',
    holds: {
      'cochlear-nerve': 0.93,
      'vestibular-nerve': 0.8,
      'trigeminal-root': 0.7,
      'facial-nerve-before-canal': 0.65,
      'middle-cerebellar-peduncle': 0.7,
      'cerebellar-hemisphere': 0.5,
      'flocculonodular-lobe': 0.35,
      'abducens-nerve': 0.2,
      'vagus-nerve': 0.3,
      'glossopharyngeal-nerve': 0.3,
      'intracranial-pressure': 0.2,
    },
    source: lower,
  },
  'jugular-foramen': {
    label: 'Jugular foramen',
    holds: { 'glossopharyngeal-nerve': 0.9, 'vagus-nerve': 0.9, 'accessory-nerve': 0.85 },
    nerves: { 'spinal-accessory-nerve-upper-neck': [0.8, 0] },
    source: lower,
  },
  'jugular-foramen-and-hypoglossal-canal': {
    label: 'Jugular foramen',
    holds: {
      'glossopharyngeal-nerve': 0.85,
      'vagus-nerve': 0.9,
      'accessory-nerve': 0.75,
      'hypoglossal-nerve': 0.9,
      'cervical-sympathetic-chain': 0.35,
    },
    nerves: { 'spinal-accessory-nerve-upper-neck': [0.7, 0] },
    source: lower,
  },
  'vagus-nerve': { label: 'Vagus nerve', holds: { 'vagus-nerve': 0.95 }, source: lower },
  'carotid-sheath': {
    // Nodes, torn carotid arteries and operations lie between the vagus and the sympathetic chain.
    label: 'Vagus nerve',
    holds: { 'vagus-nerve': 0.9, 'cervical-sympathetic-chain': 0.8, 'hypoglossal-nerve': 0.2 },
    source: lower,
  },
  'thoracic-inlet': {
    // A growth of the top of the lung or of the thyroid takes the larynx and the pupil of one side.
    label: 'Recurrent laryngeal nerve',
    holds: { 'recurrent-laryngeal-nerve': 0.9, 'cervical-sympathetic-chain': 0.85 },
    nerves: { 'phrenic-nerve': [0.3, 0] },
    source: lower,
  },
  'recurrent-laryngeal-nerve': {
    label: 'Recurrent laryngeal nerve',
    holds: { 'recurrent-laryngeal-nerve': 0.95 },
    source: lower,
  },
  'accessory-nerve': {
    label: 'Spinal accessory nerve near the skull base',
    holds: { 'accessory-nerve': 0.92 },
    nerves: { 'spinal-accessory-nerve-upper-neck': [0.85, 0] },
    source: lower,
  },
  'hypoglossal-nerve': { label: 'Hypoglossal nerve', holds: { 'hypoglossal-nerve': 0.95 }, source: lower },
  'hypoglossal-nerve-beside-the-vagus': {
    // In the neck the tongue's nerve crosses the vagus below the branches for the palate.
    label: 'Hypoglossal nerve',
    holds: { 'hypoglossal-nerve': 0.9, 'recurrent-laryngeal-nerve': 0.85 },
    source: lower,
  },
  'hypoglossal-nerve-beside-the-carotid': {
    // A torn carotid artery swells against both under the base of the skull.
    label: 'Hypoglossal nerve',
    holds: { 'hypoglossal-nerve': 0.9, 'carotid-sympathetic-plexus': 0.8 },
    source: lower,
  },
  'oculosympathetic-chain': {
    label: 'Sympathetic chain in the neck',
    holds: { 'cervical-sympathetic-chain': 0.95 },
    source: pupil,
  },
  'carotid-sympathetic-plexus': {
    label: 'Sympathetic chain in the neck',
    holds: { 'carotid-sympathetic-plexus': 0.95 },
    source: pupil,
  },
  'ciliary-ganglion': { label: 'Ciliary ganglion', holds: { 'ciliary-ganglion': 0.95 }, source: pupil },
} as const satisfies Record<string, Territory>;
