import type { ConceptMap, ConceptMapGroup, ConceptMapGroupElementTarget } from 'fhir/r4.js';
import type { CodeLink } from '../../exam/catalogue/item.ts';
import { type HeaderText, header, type Release } from './header.ts';

/** One statement of a map: what an own code is in another vocabulary. */
export interface MapRow {
  readonly code: string;
  readonly display: string;
  readonly target: CodeLink;
  /** Under which condition the row holds, beside the code itself. */
  readonly dependsOn?: ConceptMapGroupElementTarget['dependsOn'];
}

export interface LocalMap extends HeaderText {
  /** ValueSet of the codes that are mapped. */
  readonly sourceValueSet: string;
  /** ValueSet that every target code is in, by which a validator checks the targets of a vocabulary that it has in part. */
  readonly targetValueSet: string;
  readonly source: string;
  readonly target: string;
  readonly targetVersion?: string | undefined;
  readonly rows: readonly MapRow[];
}

/** R4 wants a comment wherever the target says less, or overlaps (invariant cmd-1). */
const comments: Readonly<Record<CodeLink['relation'], string | undefined>> = {
  equivalent: undefined,
  wider: undefined,
  narrower: 'The target says more than the source: only some of what the source covers.',
  inexact: 'Source and target overlap; neither covers the other.',
};

export function localMap(release: Release, map: LocalMap): ConceptMap {
  const elements = new Map<string, { code: string; display: string; target: ConceptMapGroupElementTarget[] }>();
  for (const { code, display, target, dependsOn } of map.rows) {
    const element = elements.get(code) ?? { code, display, target: [] };
    elements.set(code, element);
    const comment = comments[target.relation];
    element.target.push({
      code: target.code,
      display: target.display,
      equivalence: target.relation,
      ...(comment ? { comment } : {}),
      ...(dependsOn ? { dependsOn } : {}),
    });
  }
  const group: ConceptMapGroup = {
    source: map.source,
    target: map.target,
    ...(map.targetVersion ? { targetVersion: map.targetVersion } : {}),
    element: [...elements.values()],
  };
  return {
    ...header('ConceptMap', release, map),
    sourceUri: map.sourceValueSet,
    targetUri: map.targetValueSet,
    group: [group],
  };
}
