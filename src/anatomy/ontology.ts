/** One code of an open ontology with its own label, letter for letter. */
export interface Ontology {
  readonly code: string;
  readonly display: string;
}

/** An ontology class beside something of ours, and how closely it says the same; `wider`: it says less than ours. */
export interface OntologyLink extends Ontology {
  readonly relation: 'equivalent' | 'wider' | 'narrower' | 'inexact';
}
