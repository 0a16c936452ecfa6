export function serveFolder(folder: string, port: number): Promise<{ url: string; close(): Promise<void> }>;
