// The little of jstat that the outside checks ask; it brings no types of its own.
declare module 'jstat' {
  const jstat: {
    gammaln(x: number): number;
    ibeta(x: number, a: number, b: number): number;
  };
  export default jstat;
}
