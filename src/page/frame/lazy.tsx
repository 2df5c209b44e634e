import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A component whose code is fetched when it is first shown. What cannot be fetched is said, with a way to try again. */
export function lazy<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function Lazy(props: Props) {
    const [, setLoaded] = useState(() => loaded);
    const [hasFailed, setFailed] = useState(false);
    const fetchPart = (): void => {
      setFailed(false);
      load().then(
        (part) => {
          loaded = part;
          setLoaded(() => part);
        },
        () => setFailed(true),
      );
    };
    useEffect(() => {
      if (loaded === undefined) fetchPart();
    }, []);
    if (loaded !== undefined) {
      const Part = loaded;
      return <Part {...props} />;
    }
    return hasFailed ? (
      <p role="alert">
        This part of the page could not be fetched.{' '}
        <button type="button" class="plain" onClick={fetchPart}>
          Try again
        </button>
      </p>
    ) : (
      <p role="status">Opening …</p>
    );
  };
}
