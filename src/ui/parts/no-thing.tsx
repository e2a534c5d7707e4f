import { LinkButton } from './button.tsx';
import { Empty } from './note.tsx';
import { Screen } from './screen.tsx';

/** In place of a screen about a thing that is not there. */
export function NoThing({ word }: { word: 'mould' | 'thing' }) {
  return (
    <Screen title="Not recorded">
      <Empty
        title={`This ${word} is not recorded here`}
        actions={
          <>
            <LinkButton look="main" href="#/where">
              Look for it
            </LinkButton>
            <LinkButton href="#/settings">What was taken back, in Settings</LinkButton>
          </>
        }
      >
        <p>Its recording may have been taken back, or it was recorded on another device and has not come over yet.</p>
      </Empty>
    </Screen>
  );
}
