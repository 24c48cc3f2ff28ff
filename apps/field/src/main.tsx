import { LANGUAGES, writeDecimals } from "@tapside/words";
import "./look/look.css";
import { bookName } from "./store/book-name.ts";
import { signOfPhone } from "./words/decimal-sign.ts";
import { languageChosen } from "./words/language-chosen.ts";
import { withWords } from "./words/with-words.ts";

document.documentElement.lang = languageChosen();
for (const language of LANGUAGES) writeDecimals(language, signOfPhone(language));
void withWords(["first"], () => import("./start.tsx"))();
void import("./store/open-book.ts").then(({ openAhead }) => openAhead(bookName()));
