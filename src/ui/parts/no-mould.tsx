import { LinkButton } from './button.tsx';
import { Empty } from './note.tsx';
import { Screen } from './screen.tsx';

export function NoMould() {
  return (
    <Screen title="No such mould">
      <Empty
        title="This mould is not recorded here"
        actions={
          <LinkButton look="main" href="#/where">
            Look for it
          </LinkButton>
        }
      >
        <p>Its recording may have been taken back, or it was recorded on another device and has not come over yet.</p>
      </Empty>
    </Screen>
  );
}
