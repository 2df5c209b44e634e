import { useEffect } from 'preact/hooks';
import type { CatalogueIndex } from '../catalogue.ts';
import { wantPicture } from '../reasoning/picture-store.ts';
import { BodyDrawing } from './body-drawing.tsx';
import { type BodyPicture, type BodyView, bodyPicture } from './body-pictures.ts';
import { findingWords, type SkinFinding } from './skin-findings.ts';
import { patchesOf } from './tap-meaning.ts';

/** So much coarser than on the body that is tapped are the fillings of the tallest small one. */
const smallCoarseness = 3.5;

interface SkinFigureProps {
  readonly findings: readonly SkinFinding[];
  readonly index: CatalogueIndex;
  /** Begins the ids of the drawings; one for each figure of a page. */
  readonly name: string;
}

/** Findings of one modality on small bodies, to look at only: front and back, and what shows only closer by. */
export function SkinFigure({ findings, index, name }: SkinFigureProps) {
  useEffect(wantPicture, []);
  const picture = bodyPicture.value;
  if (picture === undefined) return null;
  const tallest = Math.max(...picture.views.map(({ height }) => height));
  const words = findings.map((finding) => findingWords(finding, index)).join('; ');
  return (
    <div class="skin-figure" role="img" aria-label={words === '' ? 'Nothing abnormal is recorded.' : words}>
      {viewsFor(findings, picture, index).map((view) => (
        <BodyDrawing
          key={view.key}
          view={view}
          picture={picture}
          catalogue={index.catalogue}
          findings={findings}
          name={`${name}-${view.key}`}
          coarseness={(smallCoarseness * view.height) / tallest}
        />
      ))}
    </div>
  );
}

/** The first two views, and of the others those that are needed to see a finding at all. */
function viewsFor(
  findings: readonly SkinFinding[],
  picture: BodyPicture,
  { catalogue }: CatalogueIndex,
): readonly BodyView[] {
  const [first, second, ...others] = picture.views;
  const shown = [first, second].filter((view) => view !== undefined);
  let unseen = findings.filter(({ place }) =>
    shown.every((view) => patchesOf(place, view, picture, catalogue).length === 0),
  );
  for (const view of others) {
    const seen = unseen.filter(({ place }) => patchesOf(place, view, picture, catalogue).length > 0);
    if (seen.length > 0) shown.push(view);
    unseen = unseen.filter((finding) => !seen.includes(finding));
  }
  return shown;
}
