import { useEffect, useRef, useState } from 'preact/hooks';
import { credential, needsCredential } from '../settings.ts';

/** Asks for the key of a service that lets nobody in without one. */
export function KeyDialog() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [typed, setTyped] = useState('');
  const isOpen = needsCredential.value;
  useEffect(() => {
    if (isOpen) dialog.current?.showModal();
    else dialog.current?.close();
  }, [isOpen]);
  return (
    <dialog
      ref={dialog}
      aria-labelledby="key-title"
      onClose={() => {
        needsCredential.value = false;
      }}
    >
      <form
        method="dialog"
        onSubmit={() => {
          credential.value = typed.trim();
          setTyped('');
        }}
      >
        <h2 id="key-title">This service asks for a key</h2>
        <p>Enter the access key or token that your site has given you. It is kept until this tab is closed.</p>
        <label class="note">
          Key
          <input
            type="password"
            autocomplete="off"
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
        </label>
        <p class="buttons">
          <button type="submit" class="main">
            Go on
          </button>
        </p>
      </form>
    </dialog>
  );
}
