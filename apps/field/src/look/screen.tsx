import type { ReactNode } from "react";
import { Link } from "wouter";
import { bookWords } from "../words/book.ts";

/** Something a thumb can press: goes to a place, or does a thing. */
export interface Press {
  readonly label: string;
  readonly hint?: string;
  readonly to?: string;
  readonly onPress?: () => void;
  /** A next that only waits is drawn quiet. */
  readonly quiet?: boolean;
}

interface ScreenProps {
  readonly title: string;
  readonly subtitle?: string | undefined;
  readonly aside?: string;
  /** Row of ticks above the title, as an SVG element. */
  readonly ticks?: ReactNode;
  readonly back?: Press;
  readonly middle?: Press & { readonly picture?: ReactNode };
  readonly next?: Press;
  readonly children: ReactNode;
}

/** One screen: title, bands, and the thumb zone whose three places never move. */
export function Screen({ title, subtitle, aside, ticks, back, middle, next, children }: ScreenProps) {
  return (
    <div className="screen">
      {ticks ? <div className="ticks">{ticks}</div> : null}
      <header className="title">
        {aside ? <span className="aside">{aside}</span> : null}
        <h1>{title}</h1>
        {subtitle ? <p>{subtitle}</p> : null}
      </header>
      <main>{children}</main>
      <nav className="thumb" aria-label={bookWords.thumb}>
        {back ? <ThumbKey press={back} picture={<Arrow />} /> : <span />}
        {middle ? <ThumbKey press={middle} picture={middle.picture ?? <Lens />} /> : null}
        {next ? <NextKey press={next} wide={!middle} /> : null}
      </nav>
    </div>
  );
}

function ThumbKey({ press, picture }: { press: Press; picture: ReactNode }) {
  return (
    <Pressable press={press}>
      {picture}
      <span>{press.label}</span>
    </Pressable>
  );
}

/** More than this takes two lines beside the camera on a small phone, and leaves none for the hint. */
const ONE_LINE = 9;
const ONE_WIDE_LINE = 15;

/** The one next thing; without a camera beside it, it has its place too. */
function NextKey({ press, wide }: { press: Press; wide: boolean }) {
  const long = press.label.length > (wide ? ONE_WIDE_LINE : ONE_LINE);
  const className = ["next", press.quiet && "quiet", wide && "wide"].filter(Boolean).join(" ");
  return (
    <Pressable press={press} className={className}>
      <strong className={long ? "long" : undefined}>{press.label}</strong>
      {press.hint ? <span>{press.hint}</span> : null}
    </Pressable>
  );
}

interface PressableProps {
  readonly press: Press;
  readonly className?: string | undefined;
  readonly id?: string | undefined;
  readonly children: ReactNode;
}

/** A link when it goes somewhere, a button when it does something. */
export function Pressable({ press, className, id, children }: PressableProps) {
  if (press.to !== undefined && !press.onPress) {
    return (
      <Link href={press.to} className={className} id={id}>
        {children}
      </Link>
    );
  }
  return (
    <button type="button" className={className} id={id} onClick={press.onPress}>
      {children}
    </button>
  );
}

const Arrow = () => (
  <svg viewBox="0 0 54 40" fill="none" stroke="currentColor" strokeWidth="7" aria-hidden="true">
    <path d="M52 20H6M22 4L6 20L22 36" />
  </svg>
);

/** Leads to a list or a page, where the camera has no business. */
export const Rows = () => (
  <svg viewBox="0 0 54 40" fill="none" stroke="currentColor" strokeWidth="7" aria-hidden="true">
    <path d="M4 6H50M4 20H50M4 34H50" />
  </svg>
);

const Lens = () => (
  <svg viewBox="0 0 54 40" fill="none" stroke="currentColor" strokeWidth="7" aria-hidden="true">
    <path d="M4 4H50V36H4Z" />
    <circle cx="27" cy="20" r="7" fill="currentColor" stroke="none" />
  </svg>
);
