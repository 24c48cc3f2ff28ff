import "./look/look.css";
import { languageChosen } from "./words/language-chosen.ts";
import { withWords } from "./words/with-words.ts";

document.documentElement.lang = languageChosen();
void withWords(["first"], () => import("./start.tsx"))();
