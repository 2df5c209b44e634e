/** The body as the service draws it. */
import { computed } from '@preact/signals';
import type { Picture } from '../../client/generated/api-types.ts';
import { picture } from '../reasoning/picture-store.ts';

export type BodyPicture = Picture['body'];
export type BodyView = BodyPicture['views'][number];
export type BodyPatch = BodyView['patches'][number];

/** Undefined until it has come. */
export const bodyPicture = computed<BodyPicture | undefined>(() => picture.value?.body);
