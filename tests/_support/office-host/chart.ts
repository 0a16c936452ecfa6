import type { Area } from "./area";
import { Collection } from "./collection";
import type { SheetHome } from "./homes";
import type { Range } from "./range";

/** A stacked chart as the file keeps it; what is drawn of it only Excel can show. */
export class Chart {
  readonly Id: string;
  Name: string;
  PlotVisibleOnly = true;
  /** points */
  Width = 360;
  Height = 216;
  readonly Title = { Text: "" };
  readonly Legend = { Position: "Right" };
  readonly Axes = {
    CategoryAxis: { ReversePlotOrder: false, Position: "Automatic" },
    ValueAxis: { Minimum: "" as unknown, Title: { Text: "" } },
  };
  readonly series: readonly ChartSeries[];
  place: Area | null = null;

  constructor(
    private readonly sheet: SheetHome & { charts: Chart[] },
    readonly ChartType: string,
    readonly source: Area,
    readonly seriesBy: string,
  ) {
    const number = sheet.book.nextId();
    this.Id = `{CHART-${number}}`;
    this.Name = `Chart ${number}`;
    this.series = Array.from({ length: source.columns - 1 }, () => new ChartSeries(source.rows - 1));
  }

  get Series(): Collection<ChartSeries> {
    return new Collection(this.series, () => []);
  }

  SetPosition(start: Range): void {
    this.place = start.area;
  }

  Delete(): void {
    this.sheet.charts = this.sheet.charts.filter((chart) => chart !== this);
  }
}

export class ChartSeries {
  GapWidth = 150;
  HasDataLabels = false;
  fill = "";
  readonly line = { Color: "" };
  readonly DataLabels = {
    ShowSeriesName: false,
    ShowValue: true,
    Format: { Font: { Color: "" } },
  };
  readonly points: readonly { HasDataLabel: boolean }[];

  constructor(points: number) {
    this.points = Array.from({ length: points }, () => ({ HasDataLabel: true }));
  }

  get Points(): Collection<{ HasDataLabel: boolean }> {
    return new Collection(this.points, () => []);
  }

  get Format() {
    const series = this;
    return {
      Fill: {
        SetSolidColor(colour: string) {
          series.fill = colour;
        },
      },
      Line: this.line,
    };
  }
}
