import type { ParameterRow } from '../parameter.ts';

export const subscriptionRows: readonly ParameterRow[] = [
  { name: 'status', type: 'token', says: 'Whether notifications are sent.', at: ['status:code'] },
  { name: 'type', type: 'token', says: 'Kind of channel; rest-hook here.', at: ['channel.type:code'] },
  { name: 'url', type: 'uri', says: 'Address that is notified, whole.', at: ['channel.endpoint:uri'] },
  { name: 'payload', type: 'token', says: 'Media type of what is sent.', at: ['channel.payload:code'] },
  { name: 'criteria', type: 'string', says: 'Start of the criteria.', at: ['criteria:string'] },
];
