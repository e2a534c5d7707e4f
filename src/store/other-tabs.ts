import type { TailRow } from './schema.ts';

/** What one tab tells the others: rows it wrote, and to how often the shelf had been summed afresh; or that they have to read again. */
export interface Told {
  readonly rows?: TailRow[];
  readonly folds?: number;
  readonly reload?: true;
}

/** ms from an action to what follows it: two frames. */
const SOON = 40;

/** The other tabs of one studio. */
export interface OtherTabs {
  /** Tells them now, what they are still to be told first. */
  tell(message: Told): void;
  /** Tells them a moment after this tab has shown what it did, which telling would hold up; then does what else has time. */
  tellSoon(message: Told, then: () => void): void;
  /** Tells what they are still to be told, and hears no more of them. */
  close(): void;
  /** Hears no more of them, and tells nothing more. */
  leave(): void;
}

export function openOtherTabs(name: string, heard: (message: Told) => void): OtherTabs {
  const channel = new BroadcastChannel(`mouldkeep:${name}`);
  channel.onmessage = (event: MessageEvent<Told>) => heard(event.data);
  const untold: Told[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;

  function tellAll(): void {
    clearTimeout(timer);
    timer = undefined;
    for (const message of untold.splice(0)) channel.postMessage(message);
  }

  function leave(): void {
    clearTimeout(timer);
    untold.length = 0;
    channel.close();
  }

  return {
    tell(message) {
      untold.push(message);
      tellAll();
    },
    tellSoon(message, then) {
      untold.push(message);
      timer ??= setTimeout(() => {
        tellAll();
        then();
      }, SOON);
    },
    close() {
      tellAll();
      leave();
    },
    leave,
  };
}
