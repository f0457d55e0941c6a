/** Whether the device has a signal and whether the application is stored on it; new versions. */
import { computed, signal } from '@preact/signals';
import { registerSW } from 'virtual:pwa-register';
import { strings } from './strings';

type Storing = 'storing' | 'stored' | 'not possible';

const online = signal(navigator.onLine);
const storing = signal<Storing>('serviceWorker' in navigator ? 'storing' : 'not possible');

/** A new version waits to be loaded. */
export const newVersionReady = signal(false);

export const readiness = computed(() => {
  const words = strings.offline;
  if (!online.value) return storing.value === 'stored' ? words.aloneStored : words.aloneNotStored;
  if (storing.value === 'stored') return words.connectedStored;
  return storing.value === 'storing' ? words.connectedStoring : words.connectedOnly;
});

/** What the browser hands out when the application can be put on the home screen. */
interface InstallPrompt extends Event {
  prompt(): Promise<unknown>;
}

export const installPrompt = signal<InstallPrompt | undefined>(undefined);

export async function install(): Promise<void> {
  const prompt = installPrompt.value;
  installPrompt.value = undefined;
  await prompt?.prompt();
}

let update: (reload?: boolean) => Promise<void> = () => Promise.resolve();

export function loadNewVersion(): void {
  void update(true);
}

/** Stores the application on this device and keeps the signals of this module up to date. */
export function startStoring(): void {
  addEventListener('online', () => (online.value = true));
  addEventListener('offline', () => (online.value = false));
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    installPrompt.value = event as InstallPrompt;
  });
  if (storing.value === 'not possible') return;
  update = registerSW({
    immediate: true,
    onNeedRefresh: () => (newVersionReady.value = true),
    onOfflineReady: () => (storing.value = 'stored'),
    onRegisterError: () => (storing.value = 'not possible'),
    onRegisteredSW: (_address, registration) => {
      if (!registration) storing.value = 'not possible';
      else if (registration.active) storing.value = 'stored';
    },
  });
}
