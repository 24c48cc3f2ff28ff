/** Hands a file to the phone: its share sheet where files can be shared, else a download. False when the person called it off. */
export async function handOver(blob: Blob, name: string): Promise<boolean> {
  const file = new File([blob], name, { type: blob.type });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return true;
    } catch (error) {
      if ((error as DOMException).name === "AbortError") return false;
    }
  }
  download(blob, name);
  return true;
}

export function download(blob: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
