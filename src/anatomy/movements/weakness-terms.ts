import type { OntologyLink } from '../ontology.ts';

/** HPO terms for weakness, with their labels letter for letter. */
const weaknessTerms = {
  'HP:0000467': 'Neck muscle weakness',
  'HP:0003722': 'Neck flexor weakness',
  'HP:0003547': 'Shoulder girdle muscle weakness',
  'HP:0008997': 'Proximal upper limb muscle weakness',
  'HP:0008959': 'Distal upper limb muscle weakness',
  'HP:0003484': 'Upper limb muscle weakness',
  'HP:0031108': 'Triceps weakness',
  'HP:0009077': 'Weakness of long finger extensor muscles',
  'HP:0031177': 'Finger flexor weakness',
  'HP:0009005': 'Weakness of the intrinsic hand muscles',
  'HP:0003392': 'First dorsal interossei muscle weakness',
  'HP:0003427': 'Thenar muscle weakness',
  'HP:0009023': 'Abdominal wall muscle weakness',
  'HP:0003327': 'Axial muscle weakness',
  'HP:0012515': 'Hip flexor weakness',
  'HP:0033416': 'Hip adductor weakness',
  'HP:0003749': 'Pelvic girdle muscle weakness',
  'HP:0003731': 'Quadriceps muscle weakness',
  'HP:0008994': 'Proximal lower limb muscle weakness',
  'HP:0009053': 'Distal lower limb muscle weakness',
  'HP:0031374': 'Ankle weakness',
  'HP:0009027': 'Foot dorsiflexor weakness',
  'HP:0011727': 'Peroneal muscle weakness',
  'HP:0002601': 'Paresis of extensor muscles of the big toe',
  'HP:6001375': 'Hallux plantarflexion weakness',
} as const;

type WeaknessTerm = keyof typeof weaknessTerms;

/** The term says what weakness of the movement says. */
export function sameAs(code: WeaknessTerm): OntologyLink {
  return { code, display: weaknessTerms[code], relation: 'equivalent' };
}

/** The term takes in more than weakness of the movement. */
export function partOf(code: WeaknessTerm): OntologyLink {
  return { code, display: weaknessTerms[code], relation: 'wider' };
}
