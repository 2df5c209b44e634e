import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pageStyle } from '../../src/http/api-page/page-style.ts';
import type { RunningService } from '../../src/service.ts';
import { apiDocument, describedOperations } from '../support/api-document.ts';
import { send } from '../support/client.ts';
import { startTestService } from '../support/service.ts';

/** Relative luminance of a colour such as #fbfaf7. Source: WCAG 2.2, definition of relative luminance. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe('the page of the interface', () => {
  let service: RunningService;
  let page: string;
  let policy: string;
  beforeAll(async () => {
    service = await startTestService();
    const answer = await send(`${service.url}/api`);
    page = answer.text;
    policy = answer.headers.get('Content-Security-Policy') ?? '';
  });
  afterAll(() => service.stop());

  it('runs nothing, loads nothing, and allows its one style by digest alone', () => {
    expect(page).not.toMatch(/<script|<img|<link|<iframe|\son\w+=|\sstyle=|javascript:/i);
    const styles = [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, style = '']) => style);
    expect(styles).toEqual([pageStyle]);
    const digest = createHash('sha256')
      .update(styles[0] ?? '')
      .digest('base64');
    expect(policy).toBe(
      `default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'; style-src 'sha256-${digest}'`,
    );
  });

  it('leads every link within the page to one place', () => {
    const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = new Set([...page.matchAll(/href="#([^"]+)"/g)].map(([, target]) => target));
    expect([...targets].filter((target) => !ids.includes(target))).toEqual([]);
    expect(targets.size).toBeGreaterThan(100);
  });

  it('shows every operation and every schema', () => {
    const text = page.replaceAll('&#39;', "'");
    for (const { path, operation } of describedOperations) {
      expect(text).toContain(`<code>${operation['x-family'] ?? path}</code></h3>`);
    }
    for (const name of Object.keys(apiDocument.components.schemas ?? {})) expect(text).toContain(`<h3>${name}</h3>`);
  });

  it('names the scopes that each operation needs, of a family by its types', () => {
    const accessOf = (heading: string) => {
      const [, article = ''] = page.split(`<code>${heading}</code></h3>`);
      return /<h4>Access<\/h4><p>(.*?)<\/p>/s.exec(article)?.[1]?.replaceAll(/<\/?code>/g, '');
    };
    expect(accessOf('/catalogue')).toBe('Open to everybody.');
    expect(accessOf('/views')).toBe('Any valid token.');
    expect(accessOf('/localisation')).toBe('Scope system/localisation.c or patient/localisation.c.');
    expect(accessOf('/fhir/$export')).toMatch(/^Scope system\/Observation\.rs, .* or system\/Device\.rs\.$/);
    expect(accessOf('/fhir/Measure/$evaluate-measure')).toMatch(
      /^Scopes system\/Measure\.r, .* and system\/Provenance\.rs\.$/,
    );
    const ofFamily = accessOf('/fhir/{type}/{id}')?.split('<br>') ?? [];
    expect(ofFamily[0]).toMatch(/^Scope system\/\{type\}\.r or patient\/\{type\}\.r\. For Observation, /);
    expect(ofFamily).toContain('Scope system/{type}.r. For Provenance and Subscription.');
    expect(ofFamily).toHaveLength(2);
    const articles = page.split('class="operation"').slice(1);
    for (const article of articles) expect(article.match(/<h4>Access<\/h4>/g)).toHaveLength(1);
    for (const { operation } of describedOperations.filter((one) => one.operation['x-family'] === undefined)) {
      for (const scope of operation.security.flatMap(({ bearer = [] }) => bearer)) {
        expect(page).toContain(`<code>${scope}</code>`);
      }
    }
  });

  it('has headings without a gap in their levels', () => {
    const levels = [...page.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toEqual([1]);
    levels.forEach((level, index) => {
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
    });
  });

  it('has ink that can be read on its paper, by day and by night', () => {
    const themes = [...pageStyle.matchAll(/--paper: (#\w{6})[^}]*/g)];
    expect(themes.length).toBe(2);
    for (const [theme, paper = ''] of themes) {
      const block = /--block: (#\w{6})/.exec(theme)?.[1] ?? '';
      const inks = [...theme.matchAll(/--(?:ink|soft|mark|get|post|put|delete): (#\w{6})/g)].map(([, ink = '']) => ink);
      expect(inks.length).toBe(7);
      for (const ground of [paper, block]) {
        for (const ink of inks) {
          const [light = 0, dark = 0] = [luminance(ground), luminance(ink)].sort((one, other) => other - one);
          // Source: WCAG 2.2, success criterion 1.4.3, level AA.
          expect([ink, ground, (light + 0.05) / (dark + 0.05) >= 4.5]).toEqual([ink, ground, true]);
        }
      }
    }
  });
});
