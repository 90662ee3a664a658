export function installedBrowser(root: string): string | null;
