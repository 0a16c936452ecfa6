import rule from "../../../../core/audit/rules/bundle-over-hoist";
import { ruleCases } from "../rule-cases";

// 6.313 kg/m (UK table) x 6 m = 37.878 kg: 26 bars 984.8 kg, 27 bars 1022.71 kg
ruleCases(rule, {
  silent: [
    { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000, total: 40 }] },
    { rows: [{ size: "H32", shape: "00", A: 6000, length: 6000, total: 26 }], limits: { hoist: 1000 } },
  ],
  speaks: [
    {
      rows: [
        { mark: "01", size: "H32", shape: "00", A: 6000, length: 6000, members: 1, each: 27, total: 27 },
        { mark: "02", size: "H10", shape: "00", A: 6000, length: 6000, members: 1, each: 27, total: 27 },
      ],
      limits: { hoist: 1000 },
      says: [
        {
          cell: null,
          message:
            "1 rows weigh more than the 1000 kg of the hoist, such as mark 01 with 1022.71 kg: tie them in several bundles",
        },
      ],
    },
  ],
});
