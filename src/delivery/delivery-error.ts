/** Why something could not be sent or was not taken; stable, shown with the delivery. */
export const deliveryReasons = {
  NETWORK: 'The connection failed or broke off.',
  TIMEOUT: 'No whole answer came in time.',
  ADDRESS_REFUSED: 'The name leads to an address that requests may not go to.',
  TOKEN: 'No access token was to be had, or the one sent was not accepted.',
  BUSY: 'The server asked to come again later.',
  SERVER_ERROR: 'The server failed.',
  REFUSED: 'The server refused what was sent.',
  REDIRECT: 'The server named another address; redirects are not followed.',
  ENTRY_FAILED: 'The server answered for an entry that it was not taken.',
  ANSWER_UNUSABLE: 'The answer is no transaction response, or is too long.',
  CONTENT_MISSING: 'What was to be sent is not kept any more.',
} as const satisfies Record<string, string>;

export type DeliveryReason = keyof typeof deliveryReasons;

/** A request that brought no usable answer. Carries no address and nothing of the content. */
export class SendError extends Error {
  readonly reason: DeliveryReason;

  constructor(reason: DeliveryReason) {
    super(deliveryReasons[reason]);
    this.reason = reason;
  }
}
