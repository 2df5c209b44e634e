import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { misspeltSettings } from '../../src/config/misspelt.ts';
import { type Setting, settings, settingsTable } from '../../src/config/settings.ts';
import { readConfig } from '../../src/config.ts';
import { ConfigError } from '../../src/kernel/errors.ts';

const textOf = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');

describe('the table of settings', () => {
  it('is the one of the README', () => {
    expect(textOf('README.md')).toContain(`\n${settingsTable()}\n`);
  });

  it('has every variable that is read, and none that is not', () => {
    const read = new Set<string>();
    const env = new Proxy({} as Record<string, string>, {
      get: (_, name) => {
        read.add(String(name));
        return undefined;
      },
      has: () => false,
    });
    readConfig(env);
    expect([...read].sort()).toEqual(Object.keys(settings).sort());
  });

  it('has defaults that are in their range', () => {
    for (const [name, setting] of Object.entries<Setting>(settings)) {
      if (setting.kind !== 'integer' || setting.default === null) continue;
      expect(setting.default, name).toBeGreaterThanOrEqual(setting.least);
      expect(setting.default, name).toBeLessThanOrEqual(setting.most);
    }
  });

  it('holds each number to its range', () => {
    const integers = Object.entries<Setting>(settings).flatMap(([name, one]) =>
      one.kind === 'integer' ? [{ name, ...one }] : [],
    );
    const problemsWith = (value: (one: { least: number; most: number }) => unknown) => {
      try {
        readConfig(Object.fromEntries(integers.map((one) => [one.name, String(value(one))])));
        return [];
      } catch (error) {
        if (error instanceof ConfigError) return error.problems.filter((text) => /whole number/.test(text));
        throw error;
      }
    };
    expect(problemsWith(({ least }) => least)).toEqual([]);
    expect(problemsWith(({ most }) => most)).toEqual([]);
    for (const wrong of [problemsWith(({ most }) => most + 1), problemsWith(() => '1.5'), problemsWith(() => '-1')]) {
      expect(wrong.map((text) => text.split(' ')[0]).sort()).toEqual(integers.map(({ name }) => name).sort());
    }
  });

  it('knows a misspelt name from one that is none of ours', () => {
    const env = {
      RATE_LIMT_PER_MINUTE: '5',
      DATABASE_URI: 'x',
      drain_seconds: '1',
      RATE_LIMIT_PER_MINUTE: '5',
      HOSTS: 'x',
      PATH: '/bin',
      NODE_ENV: 'production',
      LC_ALL: 'C',
    };
    expect(misspeltSettings(env)).toEqual([
      ['RATE_LIMT_PER_MINUTE', 'RATE_LIMIT_PER_MINUTE'],
      ['DATABASE_URI', 'DATABASE_URL'],
      ['drain_seconds', 'DRAIN_SECONDS'],
    ]);
  });
});

describe('the settings of a network', () => {
  const open = { HOST: '0.0.0.0', ALLOW_OPEN_NETWORK: 'true' };

  it('limit the rate where others reach the service, unless told otherwise', () => {
    expect(readConfig({}).rateLimitPerMinute).toBe(0);
    expect(readConfig(open).rateLimitPerMinute).toBeGreaterThan(0);
    expect(readConfig({ ...open, RATE_LIMIT_PER_MINUTE: '0' }).rateLimitPerMinute).toBe(0);
  });

  it('name the proxies that are believed', () => {
    for (const [value, expected] of [
      ['', false],
      ['0', false],
      ['2', 2],
      ['loopback', 'loopback'],
      ['loopback,10.0.0.0/8, 2001:db8::/32,192.0.2.7', 'loopback, 10.0.0.0/8, 2001:db8::/32, 192.0.2.7'],
    ] as const) {
      expect(readConfig({ TRUST_PROXY: value }).trustProxy, value).toBe(expected);
    }
    for (const value of ['true', 'all', '10', '10.0.0.0/33', 'loopback,proxy.example', '*', ',']) {
      expect(() => readConfig({ TRUST_PROXY: value }), value).toThrow(/TRUST_PROXY must be/);
    }
  });

  it('must let the largest body in', () => {
    expect(() => readConfig({ MAX_BODY_BYTES: '2048' })).toThrow(/MAX_BODY_BYTES must not be less than/);
  });
});
