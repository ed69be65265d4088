/** A file to hand out. */
export type NewFile = {
  readonly name: string;
  readonly data: string | Uint8Array<ArrayBuffer> | Blob;
  /** A media type without its parameters. */
  readonly type: string;
};

/** How long (ms) a browser may take to fetch what it was handed. */
const FETCHED_MS = 10_000;

/** Hands a file to the browser to keep. */
export function saveFile({ name, data, type }: NewFile): void {
  const url = URL.createObjectURL(blobOf(data, type));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(url), FETCHED_MS);
}

/** Whether this device has a share sheet that takes files. */
export function canShareFiles(): boolean {
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [new File([''], 'a.txt')] });
}

/** Hands a file to the device's share sheet; false where the person closed that, or the device does not take such a file. */
export async function shareFile({ name, data, type }: NewFile): Promise<boolean> {
  const file = new File([blobOf(data, type)], name, { type });
  if (!navigator.canShare?.({ files: [file] })) return false;
  try {
    await navigator.share({ files: [file] });
    return true;
  } catch {
    return false;
  }
}

function blobOf(data: NewFile['data'], type: string): Blob {
  if (data instanceof Blob) return data;
  return new Blob([data], { type: typeof data === 'string' ? `${type};charset=utf-8` : type });
}
