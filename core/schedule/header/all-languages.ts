import type { LanguageWords } from "./language-words";
import { ALBANIAN } from "./languages/albanian.data";
import { ANY_LANGUAGE } from "./languages/any-language.data";
import { ARABIC } from "./languages/arabic.data";
import { ARMENIAN } from "./languages/armenian.data";
import { AZERBAIJANI } from "./languages/azerbaijani.data";
import { BALTIC } from "./languages/baltic.data";
import { BENGALI } from "./languages/bengali.data";
import { CHINESE } from "./languages/chinese.data";
import { CZECH_AND_SLOVAK } from "./languages/czech-and-slovak.data";
import { DUTCH } from "./languages/dutch.data";
import { ENGLISH } from "./languages/english.data";
import { FINNISH } from "./languages/finnish.data";
import { FRENCH } from "./languages/french.data";
import { GEORGIAN } from "./languages/georgian.data";
import { GERMAN } from "./languages/german.data";
import { GREEK } from "./languages/greek.data";
import { HEBREW } from "./languages/hebrew.data";
import { HINDI } from "./languages/hindi.data";
import { INDONESIAN_AND_MALAY } from "./languages/indonesian-and-malay.data";
import { ITALIAN } from "./languages/italian.data";
import { JAPANESE } from "./languages/japanese.data";
import { KAZAKH } from "./languages/kazakh.data";
import { KOREAN } from "./languages/korean.data";
import { MONGOLIAN } from "./languages/mongolian.data";
import { NORDIC } from "./languages/nordic.data";
import { PERSIAN } from "./languages/persian.data";
import { POLISH } from "./languages/polish.data";
import { PORTUGUESE } from "./languages/portuguese.data";
import { ROMANIAN_AND_HUNGARIAN } from "./languages/romanian-and-hungarian.data";
import { RUSSIAN_AND_UKRAINIAN } from "./languages/russian-and-ukrainian.data";
import { SOUTH_SLAVIC } from "./languages/south-slavic.data";
import { SPANISH } from "./languages/spanish.data";
import { SPANISH_AND_PORTUGUESE } from "./languages/spanish-and-portuguese.data";
import { THAI } from "./languages/thai.data";
import { TURKISH } from "./languages/turkish.data";
import { UZBEK } from "./languages/uzbek.data";
import { VIETNAMESE } from "./languages/vietnamese.data";

/** All languages, in the order in which their words are tried. A further one is a file and a line here. */
export const LANGUAGES: readonly LanguageWords[] = [
  ENGLISH,
  GERMAN,
  FRENCH,
  CHINESE,
  JAPANESE,
  SPANISH_AND_PORTUGUESE,
  ARABIC,
  HINDI,
  ANY_LANGUAGE,
  SPANISH,
  PORTUGUESE,
  ITALIAN,
  DUTCH,
  POLISH,
  TURKISH,
  KOREAN,
  RUSSIAN_AND_UKRAINIAN,
  NORDIC,
  CZECH_AND_SLOVAK,
  INDONESIAN_AND_MALAY,
  ROMANIAN_AND_HUNGARIAN,
  VIETNAMESE,
  GREEK,
  SOUTH_SLAVIC,
  FINNISH,
  BALTIC,
  THAI,
  PERSIAN,
  HEBREW,
  GEORGIAN,
  ARMENIAN,
  AZERBAIJANI,
  KAZAKH,
  UZBEK,
  MONGOLIAN,
  ALBANIAN,
  BENGALI,
];
