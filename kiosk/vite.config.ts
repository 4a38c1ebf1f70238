import { defineConfig } from 'vite';

// While developing, a server on this address answers what the kiosk asks; the built kiosk is served by that server itself.
const server = process.env['GATEHAND_SERVER'] ?? 'http://127.0.0.1:8420';

export default defineConfig({
  root: import.meta.dirname,
  base: '/',
  clearScreen: false,
  server: {
    host: '127.0.0.1',
    proxy: {
      '/socket.io': { target: server, ws: true },
      '/api': { target: server },
      '/documents': { target: server },
    },
  },
  esbuild: {
    tsconfigRaw: { compilerOptions: { experimentalDecorators: true, useDefineForClassFields: false } },
  },
  build: {
    outDir: '../dist/kiosk',
    emptyOutDir: true,
    target: 'es2022',
    // Small files stay files: the content policy allows no data: fonts or scripts.
    assetsInlineLimit: 0,
    // Only index.html is an entry, so the gallery is never built. Each desk is a dynamic import and becomes its own file.
    rollupOptions: { output: { manualChunks: (id) => (/node_modules\/(lit|lit-html|lit-element|@lit)\//.test(id) ? 'lit' : undefined) } },
  },
});
