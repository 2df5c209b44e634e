/** The record that stays when an exam is removed for good. */
export interface Erasure {
  readonly examId: string;
  /** ISO 8601, UTC. */
  readonly erasedAt: string;
  readonly reason: string;
  /** Who did it, as the operating system names them. */
  readonly by: string;
  readonly versions: number;
  readonly resources: number;
  /** SHA-256 of the meaning of each version, oldest first. */
  readonly contentHashes: readonly string[];
}

export interface ErasureRepository {
  /**
   * Removes every version of an exam, every resource made from it with its history, and everything that the index has of
   * them, in one transaction with the record of it; exports that were begun before are removed too, since they would
   * promise what is gone.
   * @throws NotFoundError for an unknown exam, StoreError
   */
  erase(examId: string, why: { readonly reason: string; readonly by: string; readonly at: Date }): Promise<Erasure>;
  /** Takes what was erased out of the files too, see `Engine.purge`. @throws StoreError */
  purge(): Promise<void>;
  /** The last erasure of an exam; undefined when there was none. @throws StoreError */
  find(examId: string): Promise<Erasure | undefined>;
  /** All of them, oldest first. @throws StoreError */
  list(): Promise<readonly Erasure[]>;
}
