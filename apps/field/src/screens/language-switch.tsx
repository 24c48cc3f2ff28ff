import { LANGUAGES, type Language } from "@tapside/words";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { whenKept } from "../store/when-kept.ts";
import { chooseLanguage, languageChosen } from "../words/language-chosen.ts";
import { setupWords } from "../words/setup.ts";

/** Every other language by its own name, one tap each; the page starts again where it stands, and the same tap brings the first one back. */
export function LanguageSwitch() {
  const { live } = useBook();
  const spoken = languageChosen();
  const speak = (language: Language) => () =>
    void whenKept(live, () => {
      chooseLanguage(language);
      location.reload();
    });
  return LANGUAGES.filter((language) => language !== spoken).map((language) => (
    <Band key={language} press={{ onPress: speak(language) }}>
      <span className="name" lang={language}>
        {setupWords.site.languages[language]}
      </span>
    </Band>
  ));
}
