import { type CatalogueIndex, fullValue } from '../catalogue.ts';
import { draft } from '../draft/draft-store.ts';
import { ValueSwatch } from './pattern-fills.tsx';
import { SkinFigure } from './skin-figure.tsx';
import { isAbnormal, patternOf, skinFindings } from './skin-findings.ts';

/** The abnormal sensation of the exam as it stands, modality by modality, with the fillings in words. */
export function SensoryFindings({ index }: { readonly index: CatalogueIndex }) {
  const abnormal = skinFindings(draft.value, index).filter(isAbnormal);
  const items = [...new Set(abnormal.map(({ item }) => item))];
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
