/** The body as the service draws it, fetched once when something first shows it. */
import { signal } from '@preact/signals';
import type { Picture } from '../../client/generated/api-types.ts';
import { isPassing, service } from '../service.ts';

export type BodyPicture = Picture['body'];
export type BodyView = BodyPicture['views'][number];
export type BodyPatch = BodyView['patches'][number];

/** Undefined until it has come. */
export const bodyPicture = signal<BodyPicture | undefined>(undefined);
export const pictureIsMissing = signal(false);

const pauseMs = 4000;
let isAsked = false;

export async function fetchPicture(): Promise<void> {
  if (isAsked || bodyPicture.peek() !== undefined) return;
  isAsked = true;
  try {
    const { body } = await service.readPicture();
    bodyPicture.value = body.body;
    pictureIsMissing.value = false;
  } catch (error) {
    pictureIsMissing.value = true;
    if (isPassing(error)) setTimeout(() => void fetchPicture(), pauseMs);
  } finally {
    isAsked = false;
  }
}
