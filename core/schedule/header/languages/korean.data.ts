import type { LanguageWords } from "../language-words";

/** Column headings, Korean. */
export const KOREAN: LanguageWords = {
  language: "Korean",
  provenance: "common practice",
  columns: [
    { kind: "former", words: ["굽힘 내면 직경", "굽힘직경", "구부림 직경"] },
    { kind: "member", words: ["부재", "부재명", "위치", "부위", "구조물"] },
    { kind: "mark", words: ["철근번호", "부호", "기호", "마크"] },
    { kind: "size", words: ["규격", "직경", "호칭", "호칭지름", "철근규격", "지름"] },
    { kind: "grade", words: ["강종", "재질", "강도"] },
    { kind: "members", words: ["개소", "개소수", "부재수"] },
    { kind: "each", words: ["개소당", "부재당", "개소당 개수"] },
    { kind: "total", words: ["총개수", "총수량", "총 개수", "총 수량", "개수 계", "수량 계", "본수 계"] },
    { kind: "length", words: ["길이", "절단길이", "단위길이", "가공길이", "절단 길이"] },
    { kind: "totalLength", words: ["총길이", "총연장", "총 길이"] },
    { kind: "shape", words: ["형상", "가공형상", "형태"] },
    { kind: "unitMass", words: ["단위중량", "단위 중량", "단위무게"] },
    { kind: "mass", words: ["중량", "총중량", "무게", "총 중량"] },
    { kind: "spacing", words: ["간격", "배근간격", "배치간격"] },
    { kind: "pour", words: ["타설", "타설구간", "타설구역"] },
    { kind: "remark", words: ["비고"] },
    { kind: "remark", words: ["비고"] },
  ],
  parts: {
    count: ["개수", "수량", "갯수", "본수", "ea"],
    member: ["부재", "개소"],
    total: ["총", "합계", "전체"],
    length: ["길이"],
    mass: ["중량", "무게"],
    size: ["직경", "규격", "지름"],
    per: ["당"],
    one: ["각", "단위", "개당"],
    bar: ["철근", "본"],
  },
  rows: [
    { use: "total", words: ["계", "합계", "총계", "총중량"] },
    { use: "subtotal", words: ["소계"] },
    { use: "members-said", words: ["개소", "개", "ea"] },
    { use: "carried", words: ["이월", "차면이월", "전면이월"] },
    { use: "subtotal", words: ["페이지계"] },
  ],
};
