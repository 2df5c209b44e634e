import { useState } from 'preact/hooks';
import type { Localisation } from '../../client/generated/api-types.ts';
import { fitWords, levelWords, likelihoodWords, percentWords, sideWords } from './answer-words.ts';
import { EvidenceList } from './evidence-list.tsx';
import { RankSign } from './rank-sign.tsx';

const shownFirst = 5;

interface SiteListProps {
  readonly sites: readonly Localisation[];
  /** Ranks that the picture marks. */
  readonly marked: ReadonlySet<number>;
  readonly onFinding: (pointer: string) => void;
}

/** The sites in play, the likeliest first, each with what speaks for it and against it. */
export function SiteList({ sites, marked, onFinding }: SiteListProps) {
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? sites : sites.slice(0, shownFirst);
  return (
    <section class="sites" aria-labelledby="sites-title">
      <h3 id="sites-title">Where the lesion may be</h3>
      <ol>
        {shown.map((site, place) => (
          <li key={`${site.site} ${site.side} ${site.kind === 'root' ? site.level : ''}`}>
            <SiteDetails site={site} rank={place + 1} isMarked={marked.has(place + 1)} onFinding={onFinding} />
          </li>
        ))}
      </ol>
      {sites.length > shownFirst && (
        <button type="button" class="plain more" aria-expanded={isWhole} onClick={() => setWhole(!isWhole)}>
          {isWhole ? 'Fewer sites' : `${sites.length - shownFirst} more sites`}
        </button>
      )}
    </section>
  );
}

interface SiteDetailsProps {
  readonly site: Localisation;
  readonly rank: number;
  readonly isMarked: boolean;
  readonly onFinding: (pointer: string) => void;
}

function SiteDetails({ site, rank, isMarked, onFinding }: SiteDetailsProps) {
  const { label, probability, fit, supporting, against, unexplained } = site;
  const level = levelWords(site);
  const where = [sideWords(site), level].filter((words) => words !== null).join(' · ');
  return (
    <details class="site" open={rank === 1}>
      <summary>
        <RankSign rank={rank} isMarked={isMarked} />
        <span class="name">
          <strong>{label}</strong>
          {where !== '' && <span class="where">{where}</span>}
        </span>
        <span class="probability">
          <span class="words">{likelihoodWords(probability)}</span>
          <progress max={100} value={Math.round(100 * probability)} aria-hidden="true" />
          <span class="percent">{percentWords(probability)}</span>
        </span>
      </summary>
      <p class="fit">{fitWords(fit)}.</p>
      <EvidenceList title="For" evidence={supporting} onFinding={onFinding} />
      <EvidenceList title="Against" evidence={against} onFinding={onFinding} />
      <EvidenceList title="Unexplained" evidence={unexplained} onFinding={onFinding} hasStrength={false} />
      {against.length + unexplained.length === 0 && <p class="soft">Nothing recorded speaks against it.</p>}
    </details>
  );
}
