import type { Level } from '../../domain/flag.ts';
import type { Front } from '../../views/front.ts';
import { frontInWords, markInWords } from '../../views/front-words.ts';
import type { PlaceMark } from '../../views/place-mark.ts';
import { FLAG_SHAPE, LEVEL_TONE } from '../flag-look.ts';
import { Shape, type ShapeName } from './shape.tsx';

interface DrawerFrontProps {
  front: Front;
  /** Pixels for a millimetre. */
  scale: number;
  isPicked: boolean;
  onPick: (id: string) => void;
  /** Only a part of the front is in sight. */
  isNear: boolean;
  /** How much bigger letters are than the 16 px that the room for them was reckoned with. */
  letters: number;
}

/** Gap of shadow between two fronts, px. */
const GAP = 3;
/** Width of a letter of 16 px, on average, px. */
const LETTER_PX = 8;
/** Room for the marks of a wide front of which only the middle is in sight, px. */
const NEAR_WORDS = 104;

/** The front of one drawer or shelf at its true size and place: label, periods, count and marks, as many as it has room for. */
export function DrawerFront({ front, scale, isPicked, onPick, isNear, letters }: DrawerFrontProps) {
  const { x, y, w, h } = front.rect;
  const width = Math.max(24, w * scale - GAP);
  const height = Math.max(24, h * scale - GAP);
  const { isOpen } = front;
  const room = roomIn(width / letters, height / letters);
  const wordsWidth = room === 'row' ? Math.min(width / 3, isNear ? NEAR_WORDS : width) : width;
  const inLetters = { width: width / letters, wordsWidth: wordsWidth / letters };
  return (
    <button
      type="button"
      class={`front front-${room === 'foot' ? 'foot-only' : room} ${isOpen ? 'front-open' : ''} ${isPicked ? 'front-picked' : ''}`}
      style={{ left: `${x * scale}px`, top: `${y * scale}px`, width: `${width}px`, height: `${height}px` }}
      aria-pressed={isPicked}
      data-place={front.id}
      onClick={() => onPick(front.id)}
    >
      <span class="unseen">{frontInWords(front)}</span>
      <FrontFace front={front} room={room} isOpen={isOpen} {...inLetters} />
    </button>
  );
}

interface FaceProps {
  front: Front;
  room: Room;
  isOpen: boolean;
  /** Both as many px as they would be with letters of 16 px. */
  width: number;
  wordsWidth: number;
}

/** What is seen of it; read out it is the sentence beside it. */
function FrontFace({ front, room, width, isOpen, wordsWidth }: FaceProps) {
  return (
    <>
      {room === 'foot' && width >= 120 ? (
        <span class="front-head" aria-hidden="true">
          <Label front={front} />
          <Periods front={front} />
        </span>
      ) : (
        <Label front={front} />
      )}
      {(room === 'all' || room === 'periods-one' || room === 'row') && (
        <Periods front={front} width={room === 'row' ? undefined : width - 12} />
      )}
      {!isOpen && room === 'all' && <span class="front-pull" />}
      {room === 'only' ? <Dot marks={front.marks} /> : <Foot front={front} width={wordsWidth} />}
    </>
  );
}

type Room = 'only' | 'foot' | 'periods-one' | 'all' | 'row';

/** What a front has room for: its label only, the count and marks too, the periods too, a pull as well; or all in one row, when it is wide and low. */
function roomIn(width: number, height: number): Room {
  if (height < 84 && width >= 230) return 'row';
  if (width < 58 || height < 52) return 'only';
  if (width < 74 || height < 68) return 'foot';
  return height < 104 ? 'periods-one' : 'all';
}

function Label({ front }: { front: Front }) {
  return (
    <span class="front-label" aria-hidden="true">
      {front.label}
    </span>
  );
}

/** Nothing where the first word would be cut without a sign of it: half a word says less than none. */
function Periods({ front, width = Number.POSITIVE_INFINITY }: { front: Front; width?: number | undefined }) {
  const words = front.periods.join(', ');
  const [first = ''] = words.split(' ');
  return (
    <span class="front-periods" aria-hidden="true">
      {first.length * LETTER_PX <= width && words}
    </span>
  );
}

interface Sign {
  readonly shape: ShapeName;
  readonly level: Level;
  readonly word: string;
}

/** Marks of one shape as one sign, with its number and word when they are all of one kind. */
function signsOf(marks: Front['marks']): readonly Sign[] {
  const shapes = [...new Set(marks.map(({ kind }) => FLAG_SHAPE[kind]))];
  return shapes.map((shape) => {
    const [worst, ...others] = marks.filter(({ kind }) => FLAG_SHAPE[kind] === shape) as [PlaceMark, ...PlaceMark[]];
    return { shape, level: worst.level, word: others.length === 0 ? markInWords(worst) : '' };
  });
}

function Foot({ front, width }: { front: Front; width: number }) {
  const isOver = front.capacity !== undefined && front.pieces > front.capacity;
  const signs = signsOf(front.marks).slice(0, Math.max(1, Math.floor((width - 36) / 26)));
  const hasWords = width > 60 + signs.reduce((sum, { word }) => sum + 40 + word.length * LETTER_PX, 0);
  return (
    <span class="front-foot" aria-hidden="true">
      <span class={isOver ? 'front-count front-count-over' : 'front-count'}>{front.pieces}</span>
      {signs.length > 0 && (
        <span class="front-marks">
          {signs.map(({ shape, level, word }) => (
            <span key={shape} class={`front-mark mark-${LEVEL_TONE[level]}`}>
              <Shape name={shape} size={16} />
              {hasWords && word}
            </span>
          ))}
        </span>
      )}
    </span>
  );
}

function Dot({ marks: [worst] }: { marks: Front['marks'] }) {
  if (!worst) return null;
  return (
    <span aria-hidden="true" class={`front-dot mark-${LEVEL_TONE[worst.level]}`}>
      <Shape name={FLAG_SHAPE[worst.kind]} size={14} />
    </span>
  );
}
