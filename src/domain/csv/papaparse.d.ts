// The little of papaparse that is used. Its published types bring Node's along, and with them a clock into the domain.
declare module 'papaparse' {
  interface Fault {
    readonly type: string;
    readonly code: string;
    readonly message: string;
    readonly row?: number;
  }
  interface Step<T> {
    readonly data: T;
    readonly errors: readonly Fault[];
    readonly meta: { readonly cursor: number };
  }
  interface Options<T> {
    readonly delimiter?: string;
    readonly newline?: '\r' | '\n' | '\r\n';
    readonly preview?: number;
    readonly fastMode?: boolean;
    readonly skipEmptyLines?: boolean | 'greedy';
    readonly step?: (result: Step<T>, parser: { abort(): void }) => void;
  }
  const Papa: {
    parse<T>(text: string, options: Options<T>): { readonly data: readonly T[]; readonly errors: readonly Fault[] };
  };
  export default Papa;
}
