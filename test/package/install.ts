import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Failed, root, run } from "./run.ts";

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly engines?: Readonly<Record<string, string>>;
}

interface LockEntry {
  readonly version: string;
  readonly dev?: boolean;
}

/** A project outside the repository, with the packed tarball installed in it. */
export interface Scratch {
  readonly folder: string;
  readonly tarball: string;
  readonly manifest: Manifest;
  /** The package as installed. */
  readonly installed: string;
}

const readJson = <T>(...path: string[]): T => JSON.parse(readFileSync(join(...path), "utf8")) as T;

/**
 * Packs the repository and installs the tarball as a stranger would. The scratch project's lockfile
 * holds the tarball, and our run-time packages at the versions and digests of our own lockfile. So
 * `npm ci` takes them from the cache that the repository's `npm ci` filled, else from the registry.
 */
export function installTarball(): Scratch {
  const folder = mkdtempSync(join(tmpdir(), "steelyard-package-"));
  const manifest = readJson<Manifest>(root, "package.json");
  const packed = run(
    "npm",
    ["pack", "--silent", "--ignore-scripts", "--pack-destination", folder],
    root,
  ).trim();
  const tarball = join(folder, `${manifest.name}.tgz`);
  renameSync(join(folder, packed.split("\n").at(-1) ?? ""), tarball);

  const { packages } = readJson<{ packages: Record<string, LockEntry> }>(root, "package-lock.json");
  const registry = run("npm", ["config", "get", "registry"], root).trim().replace(/\/$/, "");
  const runTime = Object.entries(packages)
    .filter(([path, entry]) => path !== "" && !entry.dev)
    .map(([path, entry]) => [path, { ...entry, resolved: tarballOf(registry, path, entry.version) }]);
  const ours = `file:${manifest.name}.tgz`;
  const project = {
    name: "scratch",
    version: "0.0.0",
    private: true,
    type: "module",
    dependencies: { [manifest.name]: ours },
  };
  const { version, dependencies, engines } = manifest;
  const lock = {
    ...project,
    lockfileVersion: 3,
    requires: true,
    packages: {
      "": project,
      [`node_modules/${manifest.name}`]: { version, resolved: ours, dependencies, engines },
      ...Object.fromEntries(runTime),
    },
  };
  writeFileSync(join(folder, "package.json"), JSON.stringify(project, null, 2));
  writeFileSync(join(folder, "package-lock.json"), JSON.stringify(lock, null, 2));
  cpSync(join(root, ".npmrc"), join(folder, ".npmrc"));
  run("npm", ["ci", "--prefer-offline", "--ignore-scripts", "--no-audit", "--no-fund"], folder);

  const installed = join(folder, "node_modules", manifest.name);
  if (readJson<Manifest>(installed, "package.json").version !== version)
    throw new Failed("another version was installed");
  mkdirSync(join(folder, "out"));
  return { folder, tarball, manifest, installed };
}

/** Where a registry keeps a package, given the package's place in `node_modules`. */
function tarballOf(registry: string, path: string, version: string): string {
  const name = path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);
  return `${registry}/${name}/-/${name.split("/").at(-1)}-${version}.tgz`;
}
