import { readFileSync } from "node:fs";
import { importFile, fold, EMPTY_STATE, bookOf, unitFile } from "@tapside/records";
import { assess } from "@tapside/assessment";
import * as A from "@tapside/assessment";
import * as B from "@tapside/book";
import * as K from "@tapside/kitchen";
const c=importFile(readFileSync("examples/one-visit.tapside.json","utf8")); if(c.kind!=="known") throw 1;
const changes=c.value.changes as any[];
const EXT=[0,-1,1e-9,1e9,1e308,-1e308,999999];
function run(cs:any[]){
  const book=bookOf(fold(EMPTY_STATE,cs)); const out:any={};
  const id=[...book.unit.keys()][0]!; const file=unitFile(book,id)!; const v=[...book.visit.values()].at(-1)!;
  out.assess=assess(file,v.id,{asOf:"2025-11-20T11:00:00Z",timeZone:"UTC",settings:book.settings.get("settings")??{}} as any);
  out.due=B.dueList(book,"2026-01-01");
  return out;
}
const bad=(x:any,path="",acc:string[]=[]):string[]=>{ if(acc.length>3) return acc; if(typeof x==="number"){ if(Number.isNaN(x)||!Number.isFinite(x)) acc.push(path+"="+x);} else if(x instanceof Map){for(const [k,v] of x) bad(v,path+"."+k,acc);} else if(x&&typeof x==="object"&&!ArrayBuffer.isView(x)){ for(const k of Object.keys(x)) { if(k==="file") continue; bad(x[k],path+"."+k,acc);} } return acc; };
const t0=Date.now(); const base=run(changes); console.log("base",Date.now()-t0,bad(base));
let n=0,slow=0;
changes.forEach((ch,i)=>{ for(const [f,val] of Object.entries(ch.fields as any)){
  const numeric=typeof val==="number"||(val&&typeof val==="object"&&typeof (val as any).value==="number");
  if(!numeric) continue;
  for(const x of EXT){ const cs=changes.slice(); const nv=typeof val==="number"?x:{...(val as any),value:x,raw:String(x)};
    cs[i]={...ch,fields:{...ch.fields,[f]:nv}}; n++; const t=Date.now();
    try{ const o=run(cs); const b=bad(o); const ms=Date.now()-t; if(b.length) console.log("BAD",ch.kind,f,x,b.slice(0,3).join(" ")); if(ms>400){slow++; console.log("SLOW",ch.kind,f,x,ms);} }
    catch(e:any){ console.log("THROW",ch.kind,f,x,String(e).slice(0,160)); } } } });
console.log("cases",n,"slow",slow);
