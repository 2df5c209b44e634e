/** One code of an open ontology with its own label, letter for letter. */
export interface Ontology {
  readonly code: string;
  readonly display: string;
}
