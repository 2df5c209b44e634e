import { useEffect } from 'preact/hooks';
import { type CatalogueIndex, catalogueIndex, fullValue } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { BodyDrawing } from './body-drawing.tsx';
import { type BodyPicture, type BodyView, bodyPicture, fetchPicture } from './body-pictures.ts';
import { ValueSwatch } from './pattern-fills.tsx';
import { findingWords, isAbnormal, patternOf, type SkinFinding, skinFindings } from './skin-findings.ts';
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
  useEffect(() => void fetchPicture(), []);
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

/** The abnormal sensation of the exam as it stands, modality by modality, with the fillings in words; nothing where there is none. */
export function SensoryFindings() {
  const index = catalogueIndex.value;
  if (index === undefined) return null;
  const abnormal = skinFindings(draft.value, index).filter(isAbnormal);
  const items = [...new Set(abnormal.map(({ item }) => item))];
  if (items.length === 0) return null;
  return (
    <div class="sensory-findings">
      {items.map((item) => {
        const findings = abnormal.filter((finding) => finding.item === item);
        const values = [...new Set(findings.map(({ value }) => value))];
        return (
          <figure key={item.key} class="small-figure">
            <SkinFigure findings={findings} index={index} name={`shown-${item.key}`} />
            <figcaption>
              {item.label}
              {values.map((value) => (
                <span key={value} class="swatch-word">
                  <ValueSwatch pattern={patternOf(item, value)} name={`shown-${item.key}-${value}`} />{' '}
                  {fullValue(item, value).toLowerCase()}
                </span>
              ))}
            </figcaption>
          </figure>
        );
      })}
    </div>
  );
}
