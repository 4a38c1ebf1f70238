import { defineConfig } from 'playwright/test';

const chromium = process.env['GATEHAND_CHROMIUM'] ?? '/usr/bin/chromium';

export default defineConfig({
  testDir: './journeys',
  outputDir: './results/journeys',
  timeout: 120_000,
  expect: { timeout: 15_000 },
  workers: 2,
  fullyParallel: false,
  retries: 0,
  reporter: [['list'], ['json']],
  use: {
    viewport: { width: 1280, height: 800 },
    hasTouch: true,
    locale: 'en-GB',
    timezoneId: 'UTC',
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(chromium === '' ? {} : { executablePath: chromium }),
      args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
    },
  },
});
