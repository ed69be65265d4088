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

/** Hands files to the device's own share sheet where it takes them, else to the browser to keep. */
export async function handOver(files: readonly NewFile[]): Promise<void> {
  const data = {
    files: files.map((file) => new File([blobOf(file.data, file.type)], file.name, { type: file.type })),
  };
  if (navigator.canShare?.(data)) {
    try {
      await navigator.share(data);
      return;
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return; // the person thought better of it
    }
  }
  files.forEach(saveFile);
}

function blobOf(data: NewFile['data'], type: string): Blob {
  if (data instanceof Blob) return data;
  return new Blob([data], { type: typeof data === 'string' ? `${type};charset=utf-8` : type });
}
