import type { FakeExcel } from "./fake-excel";

/** What a page's window lacks until Excel stands behind it. */
interface HostedWindow {
  external?: unknown;
  _richApiNativeBridge?: unknown;
  fakeExcel?: FakeExcel;
}

/** Last part of the host's information: a shared runtime that also serves worksheet functions. */
const SHARED_WITH_FUNCTIONS = 3;
const EXCEL = 1;

/**
 * Makes a window look like Excel's own on Windows. It must run before office.js loads, which then takes
 * its host from `window.external` and its bridge from `_richApiNativeBridge`.
 */
export function installFakeExcel(window: object, excel: FakeExcel, locale = "en-US"): void {
  const stored = new Map<string, unknown>();
  const settings = {
    Read(keys: string[], values: unknown[]) {
      for (const [key, value] of stored) {
        keys.push(key);
        values.push(value);
      }
    },
    Write(keys: readonly string[], values: readonly unknown[]) {
      stored.clear();
      for (const [index, key] of keys.entries()) stored.set(key, values[index]);
    },
  };
  const context = {
    GetAppType: () => EXCEL,
    GetSolutionRef: () => "fake",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetAppUILocale: () => locale,
    GetAppDataLocale: () => locale,
    GetDocUrl: () => "Book1.xlsx",
    GetAppCapabilities: () => 1,
    GetActivationMode: () => 2,
    GetControlIntegrationLevel: () => 1,
    GetSolutionToken: () => "",
    GetSupportedMatrix: () => JSON.stringify(excel.sets),
    GetHostFullVersion: () => "16.0.19000.20000",
    GetSettings: () => settings,
    GetOfficeThemeInfo: () => JSON.stringify({ bodyBackgroundColor: 0xf3f2f1, bodyForegroundColor: 0 }),
  };
  const external = {
    GetContext: () => context,
    GetHostInfo: () => `Excel$Win32$16.01$${locale}$fake$$disableLogging$${SHARED_WITH_FUNCTIONS}`,
    GetLoggingAllowed: () => false,
    Execute: (_id: number, _parameters: unknown, done?: (status: number) => void) => done?.(1),
    RegisterEvent: (_id: number, _target: unknown, _handler: unknown, done?: (status: number) => void) =>
      done?.(0),
    UnregisterEvent: (_id: number, _target: unknown, done?: (status: number) => void) => done?.(0),
  };
  Object.defineProperty(window, "external", { value: external, writable: true, configurable: true });
  const hosted = window as HostedWindow;
  hosted._richApiNativeBridge = excel.bridge;
  hosted.fakeExcel = excel;
}
