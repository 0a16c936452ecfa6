import type { LanguageWords } from "../language-words";

/** Column headings and words of rows, Thai. */
export const THAI: LanguageWords = {
  language: "Thai",
  provenance: "memory",
  columns: [
    { kind: "grade", words: ["ชั้นคุณภาพ", "เกรด"] },
    { kind: "mark", words: ["หมายเลข", "เครื่องหมาย", "เบอร์"] },
    { kind: "member", words: ["ชิ้นส่วน", "ตำแหน่ง"] },
    { kind: "shape", words: ["รูปร่าง", "รูปแบบ", "แบบ"] },
    { kind: "pour", words: ["เทคอนกรีต", "ครั้งที่เท"] },
    { kind: "remark", words: ["หมายเหตุ"] },
    { kind: "spacing", words: ["ระยะห่าง", "ระยะ"] },
    { kind: "ignored", words: ["ลำดับ", "ลำดับที่"] },
  ],
  parts: {
    count: ["จำนวน"],
    member: ["ชิ้น", "ชิ้นส่วน", "องค์อาคาร"],
    total: ["รวม", "ทั้งหมด"],
    length: ["ความยาว", "ยาว"],
    mass: ["น้ำหนัก"],
    size: ["ขนาด", "เส้นผ่านศูนย์กลาง"],
    per: ["ต่อ"],
    one: ["ละ", "แต่ละ"],
    metre: ["เมตร"],
    bar: ["เหล็ก", "เส้น", "ท่อน"],
  },
  rows: [
    { use: "total", words: ["รวม", "รวมทั้งหมด", "น้ำหนักรวม"] },
    { use: "members-said", words: ["จำนวน", "ชุด", "ต้น", "ตัว"] },
    { use: "carried", words: ["ยกไป", "ยกมา"] },
    { use: "subtotal", words: ["รวมย่อย"] },
  ],
};
