import { codeOfUnit, newStickerCode, stickerLink } from "@tapside/book";
import { signOf } from "@tapside/report/sign";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { handOver } from "../store/hand-over.ts";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { Gone } from "./gone.tsx";
import OfficeWorker from "./office-worker.ts?worker";
import type { UnitLine } from "./unit-line.ts";
import { useUnitLines } from "./use-unit-lines.ts";

interface Sticker {
  readonly link: string;
  readonly code: string;
  readonly lines: readonly string[];
}

const ROLL = 50;

const stickerOf = (line: UnitLine): Sticker => {
  const { unit, site, point } = line.row.file;
  const code = unit.sticker ?? codeOfUnit(unit.id);
  const texts = [site.name, unit.name, point.name, site.code].filter((text): text is string => Boolean(text));
  return { link: stickerLink(location.href, code), code, lines: texts };
};

const blank = (): Sticker => {
  const code = newStickerCode(crypto.getRandomValues(new Uint8Array(7)));
  return { link: stickerLink(location.href, code), code, lines: [] };
};

/** The PDF of a roll, made in a worker; false when it could not be made. */
function print(stickers: readonly Sticker[], name: string): Promise<boolean> {
  const worker = new OfficeWorker();
  return new Promise((done) => {
    const end = (ok: boolean) => {
      worker.terminate();
      done(ok);
    };
    worker.addEventListener("error", () => end(false));
    worker.addEventListener("message", ({ data }: MessageEvent<{ pdf?: Uint8Array<ArrayBuffer> }>) => {
      if (!data.pdf) return end(false);
      void handOver(new Blob([data.pdf], { type: "application/pdf" }), name).then(() => end(true));
    });
    worker.postMessage(stickers);
  });
}

/** Rolls of stickers: one for every unit, or new ones to stick on and scan. */
export function StickersScreen() {
  const lines = useUnitLines();
  const [said, setSaid] = useState("");
  const make = async (stickers: readonly Sticker[]) =>
    setSaid((await print(stickers, "tapside-stickers.pdf")) ? "" : officeWords.stickerFailed);
  return (
    <Screen
      title={officeWords.stickerRoll}
      back={{ label: words.back, to: "/more" }}
      next={{ label: words.book, to: "/" }}
    >
      <Band press={{ onPress: () => void make(lines.map(stickerOf)) }}>
        <span className="name">{officeWords.ofAllUnits}</span>
        <p className="note">{words.units(lines.length)}</p>
      </Band>
      <Band press={{ onPress: () => void make(Array.from({ length: ROLL }, blank)) }}>
        <span className="name">{officeWords.blankRoll}</span>
        <p className="note">{officeWords.blankHint}</p>
      </Band>
      <p className="band" role="status">
        {said}
      </p>
    </Screen>
  );
}

/** The sticker of one unit: its code, and one to print. */
export function UnitStickerScreen({ id }: { id: string }) {
  const line = useUnitLines().find((one) => one.id === id);
  const [said, setSaid] = useState("");
  if (!line) return <Gone />;
  const sticker = stickerOf(line);
  const make = async () =>
    setSaid((await print([sticker], `sticker-${sticker.code}.pdf`)) ? "" : officeWords.stickerFailed);
  return (
    <Screen
      title={officeWords.stickerOf}
      subtitle={line.title}
      back={{ label: words.back, to: `/unit/${id}` }}
      next={{ label: officeWords.printStickers, hint: sticker.code, onPress: () => void make() }}
    >
      <div className="band as-printed">
        <Sign {...sticker} />
        <p>
          <strong className="name">{sticker.code}</strong>
          {sticker.lines.map((text) => (
            <span key={text}>{text}</span>
          ))}
        </p>
      </div>
      <p className="band note">{sticker.link}</p>
      <p className="band" role="status">
        {said}
      </p>
    </Screen>
  );
}

/** The sign as it is printed: dark on white whatever the theme, so that another phone reads it off this one. */
function Sign({ link, code }: Sticker) {
  const { modules, dark } = useMemo(() => signOf(link), [link]);
  return (
    <svg
      viewBox={`0 0 ${modules} ${modules}`}
      shapeRendering="crispEdges"
      role="img"
      aria-label={`QR ${code}`}
    >
      <path d={`M0 0h${modules}v${modules}h-${modules}z`} fill="#ffffff" />
      <path d={dark.map(([x, y]) => `M${x} ${y}h1v1h-1z`).join("")} fill="#000000" />
    </svg>
  );
}
