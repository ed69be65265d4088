/** The second reader of DXF brings no types: the part of it that is used here. */
declare module 'dxf' {
  export class Helper {
    constructor(text: string);
    readonly parsed: {
      readonly header: { readonly insUnits?: number };
      readonly entities: readonly { readonly type: string; readonly layer: string }[];
    };
  }
}
