/** A point of a picture as shares of its width and height: 0, 0 is its top left corner. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A symbol seen in a picture, and the corners of its square in order. */
export interface Sighting {
  readonly text: string;
  readonly corners: readonly Point[];
}

export interface Size {
  readonly wide: number;
  readonly tall: number;
}

export interface Rect extends Size {
  readonly left: number;
  readonly top: number;
}

/** Each text once, the first sighting of it counting. */
export function eachOnce(sightings: readonly Sighting[]): readonly Sighting[] {
  return sightings.filter(({ text }, i) => sightings.findIndex((each) => each.text === text) === i);
}

/** Corners found in a picture that was turned by so many degrees about its middle before it was looked at, brought back to the picture itself. All in px. */
export function turnedBack(corners: readonly Point[], turned: Size, picture: Size, degrees: number): readonly Point[] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return corners.map(({ x, y }) => {
    const [dx, dy] = [x - turned.wide / 2, y - turned.tall / 2];
    return { x: dx * cos + dy * sin + picture.wide / 2, y: -dx * sin + dy * cos + picture.tall / 2 };
  });
}

/** Where a point of the picture lies in a box that it fills (`cover`) or fits in whole (`contain`), px from the box's top left corner. */
export function inBox(point: Point, picture: Size, box: Size, fit: 'cover' | 'contain'): Point {
  const [across, down] = [box.wide / picture.wide, box.tall / picture.tall];
  const scale = fit === 'cover' ? Math.max(across, down) : Math.min(across, down);
  return {
    x: (point.x - 0.5) * picture.wide * scale + box.wide / 2,
    y: (point.y - 0.5) * picture.tall * scale + box.tall / 2,
  };
}

/** What can be tapped for a symbol: the rectangle about its corners, at least `least` px either way, kept inside the box. */
export function tapTarget(corners: readonly Point[], box: Size, least: number): Rect {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const wide = Math.min(box.wide, Math.max(least, Math.max(...xs) - left));
  const tall = Math.min(box.tall, Math.max(least, Math.max(...ys) - top));
  const middle = { x: (left + Math.max(...xs)) / 2, y: (top + Math.max(...ys)) / 2 };
  return {
    left: Math.min(box.wide - wide, Math.max(0, middle.x - wide / 2)),
    top: Math.min(box.tall - tall, Math.max(0, middle.y - tall / 2)),
    wide,
    tall,
  };
}
