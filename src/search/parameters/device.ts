import type { ParameterRow } from '../parameter.ts';
import { identifierRow } from './of-every-type.ts';

export const deviceRows: readonly ParameterRow[] = [
  identifierRow,
  {
    name: 'device-name',
    type: 'string',
    says: 'Name of the software, or its kind in words.',
    at: ['deviceName.name:string', 'type.coding.display:string', 'type.text:string'],
    expression: 'Device.deviceName.name | Device.type.coding.display | Device.type.text',
  },
  { name: 'type', type: 'token', says: 'Kind of device.', at: ['type:CodeableConcept'] },
  { name: 'status', type: 'token', says: 'Status of the device.', at: ['status:code'] },
  { name: 'manufacturer', type: 'string', says: 'Who makes it.', at: ['manufacturer:string'] },
  { name: 'model', type: 'string', says: 'Number of the model.', at: ['modelNumber:string'] },
  { name: 'url', type: 'uri', says: 'Address at which it is reached.', at: ['url:uri'] },
];
