import { joinWords } from '../../kernel/words.ts';
import type { OperationGroup, OperationMember } from './read-document.ts';
import { escapeHtml } from './text-to-html.ts';

/** What a caller needs where access is configured; of a family by the types that need the same. */
export function scopesHtml({ path, members }: Pick<OperationGroup, 'path' | 'members'>): string {
  const typesByNeed = new Map<string, string[]>();
  for (const member of members) {
    const type = member.path.split('/')[2] ?? '';
    const need = needOf(member, path.includes('{type}') ? type : undefined);
    typesByNeed.set(need, [...(typesByNeed.get(need) ?? []), type]);
  }
  const lines = [...typesByNeed].map(([need, types]) => {
    if (typesByNeed.size === 1) return need;
    return `${need} For ${joinWords(types.map((type) => `<code>${escapeHtml(type)}</code>`))}.`;
  });
  return `<h4>Access</h4><p>${lines.join('<br>')}</p>`;
}

/**
 * The alternatives of a security requirement, of which the empty one stands for a service without access control.
 * @param type what is shown as `{type}`, since the others of the family differ in it alone
 */
function needOf({ operation: { security } }: OperationMember, type: string | undefined): string {
  const lists = security.flatMap(({ bearer }) => (bearer === undefined ? [] : [bearer]));
  if (lists.length === 0) return 'Open to everybody.';
  if (lists.some((scopes) => scopes.length === 0)) return 'Any valid token.';
  const shown = (scope: string) => (type === undefined ? scope : scope.replace(`/${type}.`, '/{type}.'));
  const choices = lists.map((scopes) => joinWords(scopes.map((scope) => `<code>${escapeHtml(shown(scope))}</code>`)));
  return `${lists.some(({ length }) => length > 1) ? 'Scopes' : 'Scope'} ${joinWords(choices, 'or')}.`;
}
