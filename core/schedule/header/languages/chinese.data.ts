import type { LanguageWords } from "../language-words";

/** Column headings, Chinese. */
export const CHINESE: LanguageWords = {
  language: "Chinese",
  cite: { document: "column headings of bar schedules in Chinese", provenance: "common practice" },
  columns: [
    { kind: "member", words: ["构件", "构件名称", "部位", "构件编号", "部位名称", "楼层", "构件名"] },
    { kind: "mark", words: ["编号", "钢筋编号", "筋号"] },
    {
      kind: "size",
      words: ["直径", "规格", "钢筋直径", "钢筋规格", "级别直径", "级别 直径", "型号", "规格型号"],
    },
    {
      kind: "grade",
      words: ["级别", "钢筋级别", "牌号", "钢筋种类", "等级", "钢筋等级", "材质", "强度等级"],
    },
    { kind: "members", words: ["构件数", "构件数量", "件数"] },
    { kind: "each", words: ["每件根数", "单件根数", "每构件根数", "每件数量", "单件数量"] },
    { kind: "total", words: ["总根数", "总数", "总支数", "支数", "总数量"] },
    { kind: "length", words: ["单根长度", "下料长度", "单长", "单根长", "断料长度", "每根长度", "下料长"] },
    { kind: "shape", words: ["形状", "简图", "钢筋简图", "形状代码", "钢筋形状"] },
    { kind: "mass", words: ["重量", "总重", "总重量", "质量", "总质量", "合计重量"] },
    { kind: "unitMass", words: ["每米重量", "单位重量", "每米重", "单重", "线重", "理论重量", "米重"] },
    { kind: "totalLength", words: ["总长", "总长度", "合计长度"] },
    { kind: "spacing", words: ["间距"] },
    { kind: "former", words: ["弯曲直径", "弯芯直径"] },
    { kind: "revision", words: ["版本"] },
    { kind: "remark", words: ["备注", "说明"] },
    { kind: "mark", words: ["編號", "鋼筋編號"] },
    { kind: "shape", words: ["形狀", "簡圖", "加工形狀"] },
    { kind: "remark", words: ["備註", "备 注"] },
    { kind: "unitMass", words: ["單位重", "單位重量"] },
    { kind: "member", words: ["構件", "構件名稱"] },
  ],
  parts: {
    count: ["根数", "数量", "支数", "个数", "數量", "支數", "根數", "數"],
    member: ["构件", "構件", "件"],
    total: ["总", "合计", "共", "总计", "總", "合計"],
    length: ["长度", "长", "長度", "長"],
    mass: ["重量", "重", "质量"],
    size: ["直径", "规格", "直徑", "號數", "号数"],
    per: ["每"],
    one: ["单", "單", "单根"],
    metre: ["米"],
    bar: ["钢筋", "鋼筋", "根", "下料", "断料"],
  },
  rows: [
    { use: "members-said", words: ["个", "件", "座", "榀", "根", "块", "片", "個"] },
    { use: "running-metres", words: ["延米", "延长米"] },
    { use: "carried", words: ["转下页", "承上页", "接上页", "过次页", "承前页"] },
    { use: "subtotal", words: ["本页小计", "本页合计"] },
  ],
};
