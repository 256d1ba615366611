declare module 'js-quantities' {
  /** The part of the library that the tests use. */
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
    mul(other: Qty | number): Qty;
    div(other: Qty | number): Qty;
    isCompatible(other: Qty | string): boolean;
  }
  function Qty(value: number, unit: string): Qty;
  function Qty(text: string): Qty;
  export default Qty;
}
